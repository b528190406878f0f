// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup.Touch

// Before one of several to pick from: filled where it is chosen.
Rectangle {
    id: ring

    required property bool chosen

    implicitWidth: 4.4 * Look.pixelsPerMm
    implicitHeight: implicitWidth
    radius: width / 2
    color: Look.page
    border.width: Look.hairline
    border.color: Look.ink

    Rectangle {
        anchors.centerIn: parent
        visible: ring.chosen
        width: parent.width * 0.56
        height: width
        radius: width / 2
        color: Look.ink
    }
}
