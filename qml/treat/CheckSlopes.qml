// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// Each colony before and after it, and what the marks mean.
Column {
    id: root

    required property CheckController check

    spacing: Look.margin * 0.4

    SlopesItem {
        objectName: "slopes"
        width: parent.width
        height: Math.min(45 * Look.pixelsPerMm, width * 0.8)
        picture: root.check.picture
        dusk: Look.dusk
        fontFamily: Look.fontFamily
        normalSize: Look.bodySize
        smallSize: Look.smallSize
        Accessible.role: Accessible.Graphic
        Accessible.name: root.check.pictureSpoken
    }

    MarksMeaning {
        width: parent.width
        legend: root.check.legend
    }
}
