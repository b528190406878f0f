// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// The whole board, or a share of the cells of its grid.
WashStep {
    id: step

    readonly property BoardController board: step.wash.board

    objectName: "boardCellsStep"
    title: step.wash.title

    ScrollColumn {
        anchors.fill: parent
        spacing: Look.margin

        StepLines {
            width: parent.width
            lines: step.wash.lines
        }
    }

    actions: [
        SideButton {
            objectName: "partOfBoard"
            width: parent.width
            text: qsTr("A part of its cells")
            onClicked: step.cover = "counted"
        },
        MainButton {
            objectName: "mainAction"
            width: parent.width
            focus: true
            text: step.wash.action
            onClicked: step.board.countWhole()
        }
    ]

    sheets: [
        NumberPad {
            shown: step.cover === "counted"
            title: qsTr("Cells you count")
            problem: step.board.problem
            onEdited: step.board.clearProblem()
            onCancelled: step.cover = ""
            onEntered: typed => step.board.typeCounted(typed) ? step.cover = "cells" : undefined
        },
        NumberPad {
            shown: step.cover === "cells"
            title: qsTr("Cells on the whole board")
            problem: step.board.problem
            onEdited: step.board.clearProblem()
            onCancelled: step.cover = "counted"
            onEntered: typed => step.board.typeCells(typed)
        }
    ]
}
