// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// The bees of a washed jar, counted or weighed.
PageFrame {
    id: page

    required property App app
    readonly property OwnScoopsController scoops: page.app.ownScoops

    objectName: "countBeesPage"
    context: page.scoops.context
    title: qsTr("Count these bees")
    demo: page.scoops.demo
    onBackWanted: page.app.navigator.back()

    ScrollColumn {
        anchors.fill: parent
        spacing: Look.margin

        ProblemText {
            objectName: "problem"
            width: parent.width
            text: page.scoops.problem
        }

        LabelledField {
            id: typed

            width: parent.width
            label: page.scoops.weighs ? qsTr("Grams, without the jar") : qsTr("Bees in the jar")
            hint: page.scoops.expectedLine
            fieldName: "bees"
            inputMethodHints: Qt.ImhFormattedNumbersOnly
        }

        // By touch, without the keyboard: ten at a time, and what is left over singly.
        SideRow {
            width: parent.width
            visible: !page.scoops.weighs

            SideButton {
                objectName: "oneMore"
                text: qsTr("+1")
                spoken: qsTr("One bee more")
                onClicked: typed.text = page.scoops.plus(typed.text, 1)
            }

            SideButton {
                objectName: "tenMore"
                text: qsTr("+10")
                spoken: qsTr("Ten bees more")
                onClicked: typed.text = page.scoops.plus(typed.text, 10)
            }
        }

        OptionPair {
            width: parent.width
            title: qsTr("How")
            first: qsTr("Counted")
            second: qsTr("Weighed")
            pairName: "how"
            secondChosen: page.scoops.weighs
            onPicked: isSecond => page.scoops.weighs = isSecond
        }

        OptionList {
            width: parent.width
            visible: page.scoops.weighs
            title: qsTr("The bees are")
            listName: "state"
            model: page.scoops.states
            note: page.scoops.massLine
            onPicked: key => page.scoops.pickState(key)
        }

        QuietText {
            width: parent.width
            text: page.scoops.weighs ? qsTr("A mass goes by the book's figure for a bee, so it does not count as a scoop of your own.") : qsTr("It counts for all your later scoops of this size, and this wash is judged anew with it.")
        }
    }

    actions: MainButton {
        objectName: "mainAction"
        width: parent.width
        text: qsTr("Keep")
        onClicked: {
            if (!page.scoops.keep(typed.text) && page.scoops.question !== "")
                page.cover = "odd";
        }
    }

    sheets: Sheet {
        shown: page.cover === "odd"
        title: qsTr("Is that right?")
        sentence: page.scoops.question
        actions: [
            SideButton {
                objectName: "countAgain"
                width: parent.width
                text: qsTr("No, go back")
                onClicked: {
                    page.scoops.dropQuestion();
                    page.cover = "";
                }
            },
            MainButton {
                objectName: "keepAllTheSame"
                width: parent.width
                text: qsTr("Yes, keep it")
                onClicked: page.scoops.keepAllTheSame()
            }
        ]
    }
}
