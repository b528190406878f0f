// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

WashStep {
    id: step

    objectName: "pourStep"
    title: qsTr("Pour and close")

    ScrollColumn {
        anchors.fill: parent
        spacing: Look.margin

        PlainText {
            width: parent.width
            text: qsTr("Pour in alcohol until all the bees are well covered.")
            font.pixelSize: Look.buttonSize
        }

        PlainText {
            width: parent.width
            text: qsTr("Close the lid and see that it is tight.")
            font.pixelSize: Look.buttonSize
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
        text: qsTr("Lid on: start the shake")
        onClicked: step.wash.startShake()
    }
}
