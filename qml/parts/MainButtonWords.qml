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

        BoundedWords {
            width: parent.width
            text: root.text
            most: 1.1 * Look.mainHeight
            letters: root.fontSize
            weight: Font.Bold
        }

        BoundedWords {
            width: parent.width
            text: root.detail
            most: 0.8 * Look.mainHeight
            letters: Look.smallSize
        }
    }
}
