// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// The scoop: how much, and how many bees that is. Its moment is the moment of the sample.
WashStep {
    id: step

    readonly property ScoopController scoop: step.wash.scoop

    objectName: "scoopStep"
    title: step.wash.title

    ScrollColumn {
        anchors.fill: parent

        PlainText {
            objectName: "queenAnswer"
            width: parent.width
            text: step.wash.queenAnswer
        }

        PlainText {
            width: parent.width
            text: step.scoop.measure
            font.bold: true
            font.pixelSize: Math.floor(Look.titleSize * 1.2)
        }

        PlainText {
            width: parent.width
            text: step.scoop.packing
        }

        PlainText {
            objectName: "beesLine"
            width: parent.width
            text: step.scoop.beesLine
        }

        QuietText {
            width: parent.width
            text: step.scoop.sourceLine
        }
    }

    actions: [
        SideRow {
            width: parent.width

            SideButton {
                objectName: "changeScoop"
                text: qsTr("Change the scoop")
                onClicked: step.cover = "scoop"
            }

            SideButton {
                objectName: "sources"
                fontSize: Look.bodySize
                text: qsTr("Where this comes from")
                onClicked: {
                    step.app.sources.show("scoop");
                    step.app.navigator.open(Navigator.Sources);
                }
            }
        },
        MainButton {
            objectName: "mainAction"
            width: parent.width
            focus: true
            text: qsTr("Scooped")
            detail: qsTr("time and place are kept now")
            onClicked: step.wash.scooped()
        }
    ]

    sheets: [
        ScoopEdit {
            shown: step.cover === "scoop"
            scoop: step.scoop
            onDone: step.cover = ""
            onTypeVolume: step.cover = "volume"
            onTypeBees: step.cover = "bees"
        },
        NumberPad {
            shown: step.cover === "volume"
            title: qsTr("Scoop in millilitres")
            problem: step.scoop.problem
            onCancelled: step.cover = "scoop"
            onEntered: typed => step.scoop.typeVolume(typed) ? step.cover = "scoop" : undefined
        },
        NumberPad {
            shown: step.cover === "bees"
            title: qsTr("Bees in this jar")
            problem: step.scoop.problem
            onCancelled: step.cover = "scoop"
            onEntered: typed => step.scoop.typeBees(typed) ? step.cover = "scoop" : undefined
        }
    ]
}
