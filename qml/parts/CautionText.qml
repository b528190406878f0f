// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// One of several sentences, each with a bar at its side.
Item {
    id: root

    required property string text

    implicitHeight: words.implicitHeight

    Rectangle {
        width: 4
        height: parent.height
        color: Look.honey
        Accessible.ignored: true
    }

    PlainText {
        id: words

        x: 14
        width: parent.width - 14
        text: root.text
    }
}
