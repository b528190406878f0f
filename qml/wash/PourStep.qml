// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

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

    actions: [
        SideButton {
            objectName: "washLater"
            width: parent.width
            visible: step.wash.maySetAside
            text: step.wash.jar === "" ? qsTr("Wash it later") : qsTr("Back into the tray")
            onClicked: step.wash.jar === "" ? step.cover = "jar" : step.wash.setAside(step.wash.jar)
        },
        MainButton {
            objectName: "mainAction"
            width: parent.width
            focus: true
            text: step.wash.action
            onClicked: step.wash.poured()
        }
    ]

    sheets: JarLabel {
        app: step.app
        shown: step.cover === "jar"
        onClosed: step.cover = ""
    }
}
