// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// A row of a list with the heading of its group over it, where a group begins.
Column {
    id: root

    property string heading

    width: parent ? parent.width : implicitWidth
    spacing: Look.gap / 2

    HeadText {
        width: parent.width
        text: root.heading
    }
}
