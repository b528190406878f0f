// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup

// One of several of which any number can be picked. What is picked has a filled square.
RowButton {
    id: row

    property string title
    property bool chosen: false

    text: row.title
    Accessible.role: Accessible.CheckBox
    Accessible.checkable: true
    Accessible.checked: row.chosen

    contentItem: CheckRowWords {
        title: row.title
        chosen: row.chosen
    }
}
