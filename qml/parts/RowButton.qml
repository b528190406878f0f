// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// A row that can be touched. In a list there is a rule under it, in the middle of the gap to the next.
PressButton {
    id: control

    property bool ruled: true
    property bool framed: false

    width: parent ? parent.width : implicitWidth
    implicitHeight: Math.max(Look.touchHeight, implicitContentHeight + 2 * padding)
    padding: 4
    ringMargin: 0 // a list cuts off what lies outside

    background: Rectangle {
        radius: 6
        color: control.down || control.framed ? Look.field : Look.page
        border.width: control.framed ? Look.hairline : 0
        border.color: Look.ink

        Rule {
            y: control.height + Look.gap / 2
            width: parent.width
            visible: control.ruled
        }
    }
}
