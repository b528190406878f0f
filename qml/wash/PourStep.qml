// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

WashStep {
    id: step

    objectName: "pourStep"
    title: step.wash.title

    ScrollColumn {
        anchors.fill: parent
        spacing: Look.margin

        StepLines {
            width: parent.width
            lines: step.wash.lines
        }

        QuietText {
            objectName: "positionLine"
            width: parent.width
            text: step.wash.positionLine
        }
    }

    actions: MainButton {
        objectName: "mainAction"
        width: parent.width
        focus: true
        text: step.wash.action
        onClicked: step.wash.poured()
    }
}
