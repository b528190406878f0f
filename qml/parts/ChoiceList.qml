// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// A short list inside a page that moves as a whole.
Column {
    id: list

    property alias model: rows.model
    property bool pickable: true
    property bool showsStanding: false
    property string rowName: "choice" // with the key after it, the name of a row for tests

    signal picked(string key)

    spacing: Look.gap

    Repeater {
        id: rows

        delegate: ChoiceRow {
            id: row

            required property int index
            required property string key
            required title
            required detail
            required note
            required chosen
            required standing

            objectName: list.rowName + "-" + row.key
            pickable: list.pickable
            showsStanding: list.showsStanding
            ruled: row.index < rows.count - 1
            onClicked: list.picked(row.key)
        }
    }
}
