// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup

// A figure, who says so, and how sure that is.
Column {
    id: row

    property string title
    property string detail
    property string note

    spacing: 3

    PlainText {
        width: parent.width
        text: row.title
        font.bold: true
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
