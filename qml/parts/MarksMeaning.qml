// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// Under a picture: what its marks mean, for those who ask.
Column {
    id: root

    property pictureLegend legend
    property bool shown: false

    visible: root.legend.count > 0
    spacing: Look.margin * 0.6

    SideButton {
        objectName: "marksMeaning"
        width: parent.width
        quiet: true
        text: root.shown ? qsTr("Hide what the marks mean") : qsTr("What the marks mean")
        onClicked: root.shown = !root.shown
    }

    LegendItem {
        objectName: "marks"
        width: parent.width
        implicitHeight: drawnHeight
        visible: root.shown
        legend: root.legend
        dusk: Look.dusk
        fontFamily: Look.fontFamily
        normalSize: Look.bodySize
        smallSize: Look.smallSize
        Accessible.role: Accessible.Graphic
        Accessible.name: root.legend.spoken
    }
}
