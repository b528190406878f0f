// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// The board comes out. Where the clock cannot say how long it lay, the keeper does.
WashStep {
    id: step

    readonly property BoardController board: step.wash.board

    objectName: "pullBoardStep"
    title: step.wash.title

    ScrollColumn {
        anchors.fill: parent
        spacing: Look.margin

        PlainText {
            objectName: "laidLine"
            width: parent.width
            text: step.board.laidLine
            font.bold: true
        }

        PlainText {
            objectName: "hoursLine"
            width: parent.width
            text: step.board.hoursLine
        }

        StepLines {
            width: parent.width
            lines: step.wash.lines
        }

        ProblemText {
            objectName: "hoursProblem"
            width: parent.width
            text: step.board.problem
        }
    }

    actions: [
        SideButton {
            objectName: "typeHours"
            width: parent.width
            text: qsTr("Type the hours")
            onClicked: step.cover = "hours"
        },
        MainButton {
            objectName: "mainAction"
            width: parent.width
            focus: true
            text: step.wash.action
            onClicked: step.board.pull() || !step.board.wantsHours ? undefined : step.cover = "hours"
        }
    ]

    sheets: NumberPad {
        shown: step.cover === "hours"
        title: qsTr("Hours under the colony")
        problem: step.board.problem
        onEdited: step.board.clearProblem()
        onCancelled: step.cover = ""
        onEntered: typed => step.board.typeHours(typed) ? step.cover = "" : undefined
    }
}
