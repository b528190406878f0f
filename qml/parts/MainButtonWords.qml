// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// What a main button says, and under it what that means.
Item {
    id: root

    required property string text
    required property string detail
    required property real fontSize

    implicitHeight: words.implicitHeight

    Column {
        id: words

        anchors.verticalCenter: parent.verticalCenter
        width: parent.width
        spacing: 2

        PlainText {
            width: parent.width
            text: root.text
            color: Look.actionInk
            font.bold: true
            font.pixelSize: Look.wordSize(text, root.width, root.fontSize, Font.Bold)
            lineHeight: 1.0
            horizontalAlignment: Text.AlignHCenter
            Accessible.ignored: true
        }

        PlainText {
            width: parent.width
            text: root.detail
            color: Look.actionInk
            font.pixelSize: Look.wordSize(text, root.width, Look.smallSize, Font.Normal)
            horizontalAlignment: Text.AlignHCenter
            Accessible.ignored: true
        }
    }
}
