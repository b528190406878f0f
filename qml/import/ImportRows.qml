// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// Rows of a table under a heading, to read; nothing where there are none.
Column {
    id: root

    required property string heading
    property string more // those not listed
    property alias model: rows.model

    visible: rows.count > 0
    spacing: Look.margin * 0.6

    HeadText {
        width: parent.width
        text: root.heading
    }

    Repeater {
        id: rows

        FactRow {
            width: parent ? parent.width : 0
            required title
            required detail
            required note
        }
    }

    QuietText {
        width: parent.width
        visible: root.more !== ""
        text: root.more
    }
}
