// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// The comb of a hundred with what its cells mean: beside it where there is room, else under it.
Item {
    id: root

    required property combPicture picture
    readonly property real combWidth: Math.min(width, 42 * Look.pixelsPerMm)
    readonly property bool beside: width - combWidth - Look.margin > 16 * Look.pixelsPerMm

    implicitHeight: root.beside ? Math.max(comb.height, legend.height) : comb.height + Look.margin * 0.8 + legend.height

    CombItem {
        id: comb

        objectName: "comb"
        width: root.combWidth
        height: width / aspect
        picture: root.picture
        dusk: Look.dusk
        Accessible.role: Accessible.Graphic
        Accessible.name: root.picture.spoken
    }

    Flow {
        id: legend

        x: root.beside ? comb.width + Look.margin : 0
        y: root.beside ? 0 : comb.height + Look.margin * 0.8
        width: root.beside ? root.width - comb.width - Look.margin : root.width
        spacing: Look.margin * 0.6

        CombLegend {
            full: true
            text: root.picture.fullMeaning
        }

        CombLegend {
            full: false
            visible: root.picture.hasPerhaps
            text: root.picture.coreMeaning
        }

        QuietText {
            width: Math.min(implicitWidth, legend.width)
            visible: root.picture.overflows
            text: qsTr("+ %1", "the plus in the comb, what it means").arg(root.picture.plusMeaning)
        }
    }
}
