// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// What a board or opened brood says, in its own terms.
PageFrame {
    id: page

    required property App app
    readonly property OtherAnswerController answer: page.app.otherAnswer

    objectName: "otherAnswerPage"
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
            objectName: "chanceLine"
            width: parent.width
            text: page.answer.chanceLine
        }

        PlainText {
            objectName: "loadLine"
            width: parent.width
            text: page.answer.loadLine
        }

        PlainText {
            objectName: "nextLine"
            width: parent.width
            text: page.answer.nextLine
            font.bold: true
        }

        CautionList {
            width: parent.width
            sentences: page.answer.cautions
        }

        Rule {
            width: parent.width
        }

        Repeater {
            model: page.answer.facts

            FactRow {
                width: parent ? parent.width : 0
                required title
                required detail
                required note
            }
        }

        Column {
            width: parent.width
            spacing: Look.gap

            SideButton {
                objectName: "washInstead"
                width: parent.width
                visible: !page.answer.wantsWash
                text: qsTr("Wash this colony")
                onClicked: page.answer.washInstead()
            }

            SideButton {
                objectName: "sources"
                width: parent.width
                text: qsTr("Where this comes from")
                onClicked: page.answer.openSources()
            }
        }

        QuietText {
            objectName: "placeLine"
            width: parent.width
            text: page.answer.placeLine
        }
    }

    actions: MainButton {
        objectName: "mainAction"
        width: parent.width
        focus: true
        text: page.answer.wantsWash ? qsTr("Wash this colony") : qsTr("Done")
        onClicked: page.answer.wantsWash ? page.answer.washInstead() : page.answer.done()
    }
}
