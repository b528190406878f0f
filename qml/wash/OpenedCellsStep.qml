// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import Halfcup
import Halfcup.Touch

// All drone cells that were opened: what the infested ones are a share of.
WashStep {
    id: step

    objectName: "openedCellsStep"
    title: step.wash.title

    ScrollColumn {
        anchors.fill: parent
        spacing: Look.margin

        PlainText {
            objectName: "infested"
            width: parent.width
            text: qsTr("With mites: %1").arg(step.wash.count.spoken)
            font.bold: true
        }

        StepLines {
            width: parent.width
            lines: step.wash.lines
        }
    }

    actions: MainButton {
        objectName: "mainAction"
        width: parent.width
        focus: true
        text: qsTr("Type the cells opened")
        onClicked: step.cover = "opened"
    }

    sheets: NumberPad {
        shown: step.cover === "opened"
        title: qsTr("Cells opened in all")
        problem: step.wash.count.problem
        onEdited: step.wash.count.clearProblem()
        onCancelled: step.cover = ""
        onEntered: typed => step.wash.count.typeOpened(typed)
    }
}
