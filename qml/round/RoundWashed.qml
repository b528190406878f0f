// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// The colonies of a round that are washed, or left out.
Column {
    id: root

    required property RoundController round

    spacing: Look.margin
    visible: root.round.washed.count > 0

    HeadText {
        width: parent.width
        text: qsTr("Washed")
    }

    ChoiceList {
        width: parent.width
        pickable: false
        showsStanding: true
        rowName: "washed"
        model: root.round.washed
        onPicked: key => root.round.openColony(key)
    }
}
