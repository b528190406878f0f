// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// The two days of a yard that come every year.
Column {
    id: root

    required property YardsController yards
    readonly property alias turnDate: turn.text
    readonly property alias firstWash: first.text

    spacing: Look.margin

    LabelledField {
        id: turn

        width: parent.width
        label: qsTr("Turn date")
        hint: root.yards.turnDateHint
        fieldName: "turnDate"
        text: root.yards.turnDate
    }

    LabelledField {
        id: first

        width: parent.width
        label: qsTr("First wash of the year from")
        hint: root.yards.firstWashHint
        fieldName: "firstWash"
        text: root.yards.firstWash
    }
}
