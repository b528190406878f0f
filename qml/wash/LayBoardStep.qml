// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// A board under a screened floor: from now on its hours count. Under a solid floor there is nothing to count.
WashStep {
    id: step

    readonly property BoardController board: step.wash.board

    objectName: "layBoardStep"
    title: step.wash.title

    ScrollColumn {
        anchors.fill: parent
        spacing: Look.margin

        PlainText {
            objectName: "floorLine"
            width: parent.width
            text: step.board.floorLine
        }

        ProblemText {
            objectName: "solidFloor"
            width: parent.width
            text: step.board.floorIsSolid ? qsTr("A board counts only what falls through a screen. Under a solid floor the count would mean nothing.") : ""
        }

        StepLines {
            width: parent.width
            lines: step.wash.lines
        }
    }

    actions: [
        SideButton {
            objectName: "liesThere"
            width: parent.width
            visible: step.board.floorIsScreened
            text: qsTr("It lies there already")
            onClicked: step.board.liesThere()
        },
        SideButton {
            objectName: "solid"
            width: parent.width
            visible: !step.board.floorIsScreened
            text: qsTr("Its floor is solid: leave")
            onClicked: step.wash.abandon()
        },
        MainButton {
            objectName: "screened"
            width: parent.width
            visible: !step.board.floorIsScreened
            text: step.board.floorIsSolid ? qsTr("It is screened now") : qsTr("Its floor is screened")
            detail: qsTr("written down with today's date")
            onClicked: step.board.floorWasChanged()
        },
        MainButton {
            objectName: "mainAction"
            width: parent.width
            visible: step.board.floorIsScreened
            focus: true
            text: step.wash.action
            onClicked: step.board.lay()
        }
    ]
}
