// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// Before any bee is scooped: what to beware of, and the queen.
WashStep {
    id: step

    objectName: "safetyStep"
    title: step.wash.title

    ScrollColumn {
        anchors.fill: parent
        spacing: Look.margin

        StepLines {
            width: parent.width
            lines: step.wash.lines
        }

        Repeater {
            model: step.wash.cautions

            CautionText {
                required property string modelData

                width: parent ? parent.width : 0
                text: modelData
            }
        }
    }

    actions: [
        SideButton {
            objectName: "queenNotSeen"
            width: parent.width
            text: qsTr("Queen not seen")
            onClicked: step.wash.queenNotSeen()
        },
        MainButton {
            objectName: "mainAction"
            width: parent.width
            focus: true
            text: qsTr("Queen seen and safe")
            onClicked: step.wash.queenSafe()
        }
    ]
}
