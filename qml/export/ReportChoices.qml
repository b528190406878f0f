// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// What a report is about: a colony, a yard or all; which one; of which years; on which paper.
Column {
    id: root

    required property ExportController people

    spacing: Look.gap

    OptionList {
        width: parent.width
        title: qsTr("Report of")
        note: ""
        listName: "scope"
        model: root.people.scopes
        onPicked: key => root.people.chooseScope(key)
    }

    ChoiceList {
        width: parent.width
        rowName: "subject"
        pickable: true
        model: root.people.subjects
        onPicked: key => root.people.chooseSubject(key)
    }

    OptionList {
        width: parent.width
        title: qsTr("Years")
        note: ""
        listName: "years"
        model: root.people.years
        onPicked: key => root.people.chooseYears(key)
    }

    OptionPair {
        width: parent.width
        title: qsTr("Paper")
        first: qsTr("A4")
        second: qsTr("Letter")
        secondChosen: root.people.letter
        pairName: "paper"
        onPicked: isSecond => root.people.letter = isSecond
    }
}
