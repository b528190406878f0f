// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// Anything else that can be done on a page. Several in a SideRow share its width.
PressButton {
    id: control

    property bool quiet: false // in the header: less of a button, as large a target
    property real fontSize: Math.min(Look.bodySize, Look.buttonSize * 0.9)

    implicitWidth: Look.touchHeight
    implicitHeight: Math.max(Look.touchHeight, implicitContentHeight + Look.margin)

    padding: 6 // two words that would fill the whole width stand better one over the other
    contentItem: PlainText {
        text: control.text
        color: control.enabled ? Look.ink : Look.quietInk
        font.pixelSize: Look.wordSize(text, control.availableWidth, control.fontSize, Font.Bold)
        font.weight: Font.Bold
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
        Accessible.ignored: true
    }

    background: Rectangle {
        radius: Look.corner
        color: control.down ? Look.line : control.quiet ? Look.field : Look.page
        border.width: control.quiet ? 0 : Look.hairline
        border.color: control.enabled ? Look.ink : Look.line
    }
}
