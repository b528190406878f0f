// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup.Touch

// Twelve months at a glance.
Column {
    id: root

    required property SeasonController season

    spacing: Look.margin * 0.4

    SeasonStripItem {
        objectName: "strip"
        width: parent.width
        implicitHeight: drawnHeight
        picture: root.season.picture
        dusk: Look.dusk
        fontFamily: Look.fontFamily
        normalSize: Look.bodySize
        smallSize: Look.smallSize
        Accessible.role: Accessible.Graphic
        Accessible.name: root.season.pictureSpoken
    }
}
