// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// What the count means: in words, then as a comb, then in figures.
PageFrame {
    id: page

    required property App app
    readonly property AnswerController answer: page.app.answer

    objectName: "answerPage"
    context: page.answer.context
    demo: page.answer.demo
    onBackWanted: page.app.navigator.back()

    ScrollColumn {
        anchors.fill: parent
        spacing: Look.margin

        Headline {
            width: parent.width
            standing: page.answer.standing
            text: page.answer.headline
        }

        PlainText {
            objectName: "sentence"
            width: parent.width
            text: page.answer.sentence
            font.pixelSize: Look.buttonSize
        }

        PlainText {
            objectName: "zeroLine"
            width: parent.width
            text: page.answer.zeroLine
        }

        CombView {
            width: parent.width
            picture: page.answer.comb
        }

        PlainText {
            objectName: "chanceLine"
            width: parent.width
            text: page.answer.chanceLine
        }

        PlainText {
            objectName: "ownLine"
            width: parent.width
            text: page.answer.ownLine
        }

        PlainText {
            objectName: "lineText"
            width: parent.width
            text: page.answer.lineText
        }

        PlainText {
            objectName: "nextLine"
            width: parent.width
            text: page.answer.nextLine
            font.bold: true
        }

        Column {
            width: parent.width
            spacing: Look.gap

            SideButton {
                objectName: "sources"
                width: parent.width
                text: qsTr("Where this comes from")
                onClicked: page.answer.openSources()
            }

            SideButton {
                objectName: "countBees"
                width: parent.width
                text: qsTr("Count these bees")
                onClicked: page.answer.countBees()
            }

            SideButton {
                objectName: "openColony"
                width: parent.width
                text: qsTr("This colony")
                onClicked: page.answer.openColony()
            }
        }

        LabelledField {
            width: parent.width
            label: qsTr("Note")
            fieldName: "note"
            text: page.answer.note
            onEdited: page.answer.note = text
        }

        Rule {
            width: parent.width
        }

        Repeater {
            model: page.answer.details

            FactRow {
                width: parent ? parent.width : 0
                required title
                required detail
                required note
            }
        }

        QuietText {
            objectName: "placeLine"
            width: parent.width
            text: page.answer.placeLine
        }
    }

    actions: [
        SideButton {
            objectName: "treat"
            width: parent.width
            visible: page.answer.wantsTreating
            text: qsTr("What to treat with")
            onClicked: page.answer.openTreat()
        },
        MainButton {
            objectName: "mainAction"
            width: parent.width
            focus: true
            text: page.answer.mainAction
            onClicked: page.answer.act()
        }
    ]
}
