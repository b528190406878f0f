// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// One colony: what is due, how it stands, and its story.
PageFrame {
    id: page

    required property App app
    readonly property ColonyController colony: page.app.colony

    objectName: "colonyPage"
    context: page.colony.yardName
    title: page.colony.title
    subtitle: page.colony.dueLine
    demo: page.colony.demo
    cornerText: qsTr("On a day")
    onBackWanted: page.app.navigator.back()
    onCornerPressed: page.colony.openDay()

    ScrollList {
        anchors.fill: parent
        model: page.colony.story

        header: ColonyHead {
            colony: page.colony
        }

        footer: ColonyFoot {
            colony: page.colony
            onNameWanted: page.cover = "name"
        }

        delegate: ChoiceRow {
            id: row

            required property int index
            required property string key
            required title
            required detail
            required note
            required standing

            objectName: "story-" + row.index
            showsStanding: row.standing !== StandingWord.Unknown
            ruled: row.index < page.colony.story.count - 1
            onClicked: page.colony.openStory(row.key)
        }
    }

    actions: MainButton {
        objectName: "mainAction"
        width: parent.width
        focus: true
        text: page.colony.alive ? page.colony.mainAction : qsTr("Back")
        onClicked: page.colony.alive ? page.colony.wash() : page.app.navigator.back()
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
