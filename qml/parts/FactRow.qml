// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup

// Something to read: its name, and what it is.
Column {
    id: row

    property string title
    property string detail
    property string note

    spacing: 2

    QuietText {
        width: parent.width
        text: row.title
    }

    PlainText {
        width: parent.width
        text: row.detail
    }

    QuietText {
        width: parent.width
        text: row.note
    }
}
