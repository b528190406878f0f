// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// Optional: what a second rinse brings shows how many mites the first one missed.
WashStep {
    id: step

    property bool counting: step.wash.secondRinse.touched

    objectName: "secondRinseStep"
    // Back leads to the way out, too.
    cornerText: bar.narrow && step.counting ? bar.typeText : step.leaveText
    title: step.counting ? qsTr("Count the second rinse") : step.wash.title

    function corner() {
        step.cover = bar.narrow && step.counting ? "type" : "leave";
    }

    ScrollColumn {
        anchors.fill: parent
        visible: !step.counting
        spacing: Look.margin

        StepLines {
            width: parent.width
            lines: step.wash.lines
        }

        PlainText {
            width: parent.width
            text: qsTr("It shows how many mites the first rinse left on the bees. You need it now and then, not at every wash.")
        }
    }

    CountFace {
        anchors.fill: parent
        visible: step.counting
        count: step.wash.secondRinse
    }

    actions: [
        SideButton {
            objectName: "countSecondRinse"
            width: parent.width
            visible: !step.counting
            text: qsTr("Count a second rinse")
            onClicked: step.counting = true
        },
        MainButton {
            objectName: "skipRinse"
            width: parent.width
            visible: !step.counting
            focus: !step.counting
            text: qsTr("Show the answer")
            detail: qsTr("without a second rinse")
            onClicked: step.wash.skipSecondRinse()
        },
        CountBar {
            id: bar

            pageWidth: step.width
            visible: step.counting
            count: step.wash.secondRinse
            onTypeWanted: step.cover = "type"
            onDone: step.wash.endSecondRinse()
            onNoneSaid: step.cover = "none"
        }
    ]

    sheets: [
        CountPad {
            shown: step.cover === "type"
            count: step.wash.secondRinse
            onClosed: step.cover = ""
        },
        Sheet {
            shown: step.cover === "none"
            title: qsTr("Nothing in the second rinse?")
            sentence: qsTr("Then it is kept as a second rinse with 0 mites.")
            actions: [
                SideRow {
                    width: parent.width

                    SideButton {
                        objectName: "goOnCounting"
                        text: qsTr("Go on counting")
                        onClicked: step.cover = ""
                    }

                    SideButton {
                        objectName: "notRinsed"
                        text: qsTr("Not rinsed")
                        onClicked: step.wash.skipSecondRinse()
                    }
                },
                MainButton {
                    objectName: "noneFound"
                    width: parent.width
                    focus: true
                    text: qsTr("None found")
                    onClicked: step.wash.secondRinse.type("0") ? step.wash.endSecondRinse() : undefined
                }
            ]
        }
    ]
}
