// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// The colonies of a yard, and a field to add some.
Column {
    id: root

    required property YardsController yards

    signal planWanted

    spacing: Look.margin

    FactRow {
        width: parent.width
        title: qsTr("Colonies")
        detail: root.yards.coloniesLine
    }

    SideButton {
        objectName: "yardPlan"
        width: parent.width
        text: qsTr("Plan of the yard")
        onClicked: root.planWanted()
    }

    LabelledField {
        id: labels

        width: parent.width
        label: qsTr("Add colonies")
        hint: qsTr("A run of numbers such as 1-8, or what is on the hives: 4, B12")
        fieldName: "newColonies"
        onAccepted: add.clicked()
    }

    SideButton {
        id: add

        objectName: "addColonies"
        width: parent.width
        text: qsTr("Add")
        onClicked: root.yards.addColonies(labels.text) ? labels.text = "" : undefined
    }
}
