// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// Twelve months at a glance, and what the shapes mean.
Column {
    id: root

    required property SeasonController season

    spacing: Look.margin * 0.4

    MonthsItem {
        objectName: "months"
        width: parent.width
        height: 11 * Look.pixelsPerMm
        picture: root.season.picture
        inkColor: Look.ink
        lineColor: Look.line
        courseColor: Look.honey
        todayColor: Look.action
        fontFamily: Look.fontFamily
        fontSize: Look.smallSize
        Accessible.role: Accessible.Graphic
        Accessible.name: root.season.pictureSpoken
    }

    QuietText {
        width: parent.width
        text: qsTr("Bar: treatment. Dot: wash due. Flag: turn date. Pointer: today.")
    }
}
