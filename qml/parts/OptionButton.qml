// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// One of a few side by side. The dot tells which is chosen.
PressButton {
    id: control

    property bool chosen: false

    implicitWidth: Look.touchHeight
    implicitHeight: Math.max(Look.touchHeight, implicitContentHeight + Look.margin)
    Accessible.role: Accessible.RadioButton
    Accessible.checkable: true
    Accessible.checked: control.chosen

    contentItem: OptionButtonWords {
        text: control.text
        chosen: control.chosen
    }

    background: Rectangle {
        radius: Look.corner
        color: control.down ? Look.line : control.chosen ? Look.field : Look.page
        border.width: control.chosen ? 3 : Look.hairline
        border.color: Look.ink
    }
}
