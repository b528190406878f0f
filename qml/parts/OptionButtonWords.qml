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

    ChoiceDot {
        id: dot

        x: Look.margin * 0.8
        anchors.verticalCenter: parent.verticalCenter
        implicitWidth: 3.4 * Look.pixelsPerMm
        chosen: root.chosen
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
