// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// One of two that may be the same, in a frame of its own, so that two of one name do not run together.
Rectangle {
    id: root

    required property string title
    required property string detail
    required property string note

    implicitHeight: words.height + Look.margin
    radius: Look.corner
    color: Look.page
    border.width: Look.hairline
    border.color: Look.line

    Column {
        id: words

        x: Look.margin * 0.8
        y: Look.margin * 0.5
        width: parent.width - 2 * x
        spacing: 2

        HeadText {
            width: parent.width
            text: root.title
        }

        PlainText {
            width: parent.width
            text: root.detail
        }

        QuietText {
            width: parent.width
            text: root.note
        }
    }
}
