// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

WashStep {
    id: step

    objectName: "settleStep"
    title: step.wash.title

    ScrollColumn {
        anchors.fill: parent
        centred: true

        PlainText {
            width: parent.width
            visible: step.wash.settleSecondsLeft > 0
            text: step.wash.settleSecondsLeft
            font.bold: true
            font.pixelSize: Look.titleSize * 3
            lineHeight: 1.0
            horizontalAlignment: Text.AlignHCenter
        }

        PlainText {
            width: parent.width
            text: step.wash.settleLine
            font.pixelSize: Look.buttonSize
            horizontalAlignment: Text.AlignHCenter
        }
    }

    actions: MainButton {
        objectName: "mainAction"
        width: parent.width
        focus: true
        text: step.wash.action
        onClicked: step.wash.endSettle()
    }
}
