// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup

// One record of a plan, to read: what it is, where and when, and what both phones changed.
Column {
    id: row

    property string title
    property string detail
    property string note

    spacing: 2

    PlainText {
        width: parent.width
        text: row.title
        font.weight: Font.Medium
        wrapMode: Text.WrapAtWordBoundaryOrAnywhere
    }

    QuietText {
        width: parent.width
        visible: text !== ""
        text: row.detail
        wrapMode: Text.WrapAtWordBoundaryOrAnywhere
    }

    PlainText {
        width: parent.width
        visible: text !== ""
        text: row.note
        wrapMode: Text.WrapAtWordBoundaryOrAnywhere
    }
}
