// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// Every reason with where it comes from; touching one opens the values behind it.
Column {
    id: root

    required property ChoiceController choice

    spacing: Look.gap

    Repeater {
        id: rows

        model: root.choice.reasons

        RowButton {
            id: row

            required property int index
            required property string key
            required property string title
            required property int standing
            required detail

            objectName: "reason-" + row.index
            text: row.title
            ruled: row.index < rows.count - 1
            onClicked: root.choice.openSource(row.key)

            contentItem: TreatRowWords {
                title: row.title
                detail: row.detail
                verdict: row.standing
                bold: false
            }
        }
    }
}
