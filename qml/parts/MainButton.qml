// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// The next thing to do: one on a page, at its bottom, as wide as the page.
PressButton {
    id: control

    property real fontSize: Look.mainSize

    implicitWidth: Look.mainHeight
    implicitHeight: Math.max(Look.mainHeight, implicitContentHeight + Look.margin)

    padding: Look.margin / 2
    contentItem: MainButtonWords {
        text: control.text
        detail: control.detail
        fontSize: control.fontSize
    }

    background: Rectangle {
        radius: Look.corner
        color: control.down ? Look.pressed : Look.action
    }
}
