// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// The square and the word of a row that can be picked beside others.
Item {
    id: root

    required property string title
    required property bool chosen

    implicitHeight: words.implicitHeight

    Rectangle {
        id: box

        anchors.verticalCenter: parent.verticalCenter
        width: 4.4 * Look.pixelsPerMm
        height: width
        radius: 3
        color: Look.page
        border.width: Look.hairline
        border.color: Look.ink

        Rectangle {
            anchors.centerIn: parent
            visible: root.chosen
            width: parent.width * 0.56
            height: width
            color: Look.ink
        }
    }

    PlainText {
        id: words

        anchors.verticalCenter: parent.verticalCenter
        anchors.left: box.right
        anchors.leftMargin: Look.margin * 0.8
        anchors.right: parent.right
        text: root.title
        font.weight: root.chosen ? Font.Bold : Font.Medium
        Accessible.ignored: true
    }
}
