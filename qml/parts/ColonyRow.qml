// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// A colony: its plate, what is known and due, and the mark of its standing.
RowButton {
    id: row

    property string label
    property string headline
    property string loadLine
    property string dueLine
    property int standing: StandingWord.Unknown
    property bool isDue: false
    property bool showsStanding: true // its mark at the end
    property bool pickable: false // one of several to pick from, else a thing to open
    property bool chosen: false

    Accessible.role: row.pickable ? Accessible.RadioButton : Accessible.Button
    Accessible.checkable: row.pickable
    Accessible.checked: row.chosen
    framed: row.chosen
    padding: row.pickable ? 10 : 4

    contentItem: ColonyRowWords {
        label: row.label
        headline: row.headline
        loadLine: row.loadLine
        dueLine: row.dueLine
        standing: row.standing
        isDue: row.isDue
        showsStanding: row.showsStanding
    }
}
