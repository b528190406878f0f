// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// One colony: what is due, and its washes.
PageFrame {
    id: page

    required property App app
    readonly property ColonyController colony: page.app.colony

    objectName: "colonyPage"
    context: page.colony.yardName
    title: page.colony.title
    subtitle: page.colony.dueLine
    demo: page.colony.demo
    cornerText: qsTr("Name")
    onBackWanted: page.app.navigator.back()
    onCornerPressed: page.cover = "name"

    ScrollList {
        anchors.fill: parent
        visible: page.colony.washes.count > 0
        model: page.colony.washes

        delegate: ChoiceRow {
            id: row

            required property int index
            required property string key
            required title
            required detail
            required note
            required standing

            objectName: "wash-" + row.index
            showsStanding: true
            ruled: row.index < page.colony.washes.count - 1
            onClicked: page.colony.openWash(row.key)
        }
    }

    PlainText {
        width: parent.width
        visible: page.colony.washes.count === 0
        text: qsTr("No wash yet.")
    }

    actions: MainButton {
        objectName: "mainAction"
        width: parent.width
        focus: true
        text: qsTr("Wash this colony")
        onClicked: page.colony.wash()
    }

    sheets: Sheet {
        shown: page.cover === "name"
        title: qsTr("What is on the hive?")
        sentence: qsTr("The number or the name by which you know this colony.")
        actions: [
            SideButton {
                objectName: "cancelName"
                width: parent.width
                text: qsTr("Leave it as it is")
                onClicked: page.cover = ""
            },
            MainButton {
                objectName: "keepName"
                width: parent.width
                text: qsTr("Keep")
                onClicked: page.colony.rename(name.text) ? page.cover = "" : undefined
            }
        ]

        LabelledField {
            id: name

            width: parent.width
            label: qsTr("Number or name")
            fieldName: "colonyName"
            text: page.colony.label
        }

        ProblemText {
            width: parent.width
            text: page.colony.problem
        }
    }
}
