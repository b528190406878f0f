// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// The next thing to do: one on a page, at its bottom, as wide as the page.
PressButton {
    id: control

    implicitWidth: Look.mainHeight
    implicitHeight: Math.max(Look.mainHeight, words.implicitHeight + 2 * Look.margin)

    contentItem: Item {
        Column {
            id: words

            anchors.verticalCenter: parent.verticalCenter
            x: Look.margin / 2
            width: parent.width - Look.margin
            spacing: 2

            PlainText {
                width: parent.width
                text: control.text
                color: Look.actionInk
                font.bold: true
                font.pixelSize: Look.buttonSize * 1.2
                lineHeight: 1.0
                horizontalAlignment: Text.AlignHCenter
                Accessible.ignored: true
            }

            PlainText {
                width: parent.width
                text: control.detail
                color: Look.actionInk
                font.pixelSize: Look.smallSize
                horizontalAlignment: Text.AlignHCenter
                Accessible.ignored: true
            }
        }
    }

    background: Rectangle {
        radius: Look.corner
        color: control.down ? Look.pressed : Look.action
    }
}
