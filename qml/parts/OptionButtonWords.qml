// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// The dot and the word of an option.
Item {
    id: root

    required property string text
    required property bool chosen

    implicitHeight: label.implicitHeight

    Rectangle {
        id: dot

        x: Look.margin * 0.8
        anchors.verticalCenter: parent.verticalCenter
        width: 3.4 * Look.pixelsPerMm
        height: width
        radius: width / 2
        color: Look.page
        border.width: Look.hairline
        border.color: Look.ink

        Rectangle {
            anchors.centerIn: parent
            width: parent.width * 0.56
            height: width
            radius: width / 2
            color: Look.ink
            visible: root.chosen
        }
    }

    PlainText {
        id: label

        anchors.verticalCenter: parent.verticalCenter
        anchors.left: dot.right
        anchors.leftMargin: Look.margin * 0.5
        anchors.right: parent.right
        anchors.rightMargin: 4
        text: root.text
        // As if chosen: the letters keep their size when it is.
        font.pixelSize: Look.wordSize(text, width, Look.bodySize, Font.Bold)
        font.weight: root.chosen ? Font.Bold : Font.Medium
        Accessible.ignored: true
    }
}
