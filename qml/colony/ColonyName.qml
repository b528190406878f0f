// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// What the keeper calls a colony.
Sheet {
    id: sheet

    required property ColonyController colony

    signal done

    title: qsTr("What is on the hive?")
    sentence: qsTr("The number or the name by which you know this colony.")
    actions: [
        SideButton {
            objectName: "cancelName"
            width: parent.width
            text: qsTr("Leave it as it is")
            onClicked: sheet.done()
        },
        MainButton {
            objectName: "keepName"
            width: parent.width
            text: qsTr("Keep")
            onClicked: sheet.colony.rename(name.text) ? sheet.done() : undefined
        }
    ]

    LabelledField {
        id: name

        width: parent.width
        label: qsTr("Number or name")
        fieldName: "colonyName"
        text: sheet.colony.label
    }

    ProblemText {
        width: parent.width
        text: sheet.colony.problem
    }
}
