// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// What is wrong with what was typed. A bar at its side and bold words: no colour is needed to see it.
Item {
    id: root

    property string text

    visible: root.text !== ""
    implicitHeight: root.visible ? words.implicitHeight : 0

    Rectangle {
        width: 5
        height: parent.height
        color: Look.rust
    }

    PlainText {
        id: words

        objectName: "problem"
        x: 14
        width: parent.width - 14
        text: root.text
        font.bold: true
        Accessible.role: Accessible.AlertMessage
    }
}
