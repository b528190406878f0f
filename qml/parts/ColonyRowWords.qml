// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// What a colony's row shows.
Item {
    id: root

    required property string label
    required property string headline
    required property string loadLine
    required property string dueLine
    required property int standing
    property bool showsStanding: true
    required property bool isDue

    implicitHeight: Math.max(plate.implicitHeight, words.implicitHeight)

    ColonyPlate {
        id: plate

        anchors.verticalCenter: parent.verticalCenter
        label: root.label
        filled: root.isDue
    }

    Column {
        id: words

        anchors.verticalCenter: parent.verticalCenter
        anchors.left: plate.right
        anchors.leftMargin: Look.margin * 0.8
        anchors.right: root.showsStanding ? mark.left : parent.right
        anchors.rightMargin: root.showsStanding ? Look.margin * 0.5 : 0
        spacing: 1

        PlainText {
            width: parent.width
            text: root.headline
            font.bold: true
            lineHeight: 1.05
            Accessible.ignored: true
        }

        QuietText {
            width: parent.width
            text: root.loadLine
            Accessible.ignored: true
        }

        QuietText {
            width: parent.width
            text: root.dueLine
            color: root.isDue ? Look.ink : Look.quietInk
            Accessible.ignored: true
        }
    }

    StandingMark {
        id: mark

        visible: root.showsStanding
        anchors.verticalCenter: parent.verticalCenter
        anchors.right: parent.right
        width: 6 * Look.pixelsPerMm
        height: width
        standing: root.standing
        dusk: Look.dusk
    }
}
