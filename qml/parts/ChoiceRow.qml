// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// One of several to pick from, or a thing to open. What is picked has a filled dot and says so when read aloud.
RowButton {
    id: row

    property string title
    property string note
    property bool pickable: false
    property bool chosen: false
    property int standing: StandingWord.Unknown
    property bool showsStanding: false // its mark at the end

    text: row.title
    spoken: row.title + (row.detail ? ". " + row.detail : "") + (row.note ? ". " + row.note : "")
    Accessible.role: row.pickable ? Accessible.RadioButton : Accessible.Button
    Accessible.checkable: row.pickable
    Accessible.checked: row.chosen

    contentItem: ChoiceRowWords {
        title: row.title
        detail: row.detail
        note: row.note
        pickable: row.pickable
        chosen: row.chosen
        showsStanding: row.showsStanding
        standing: row.standing
    }
}
