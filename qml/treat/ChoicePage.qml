// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// One choice: why it fits or not, what it is dangerous for, and what it would do.
PageFrame {
    id: page

    required property App app
    readonly property ChoiceController choice: page.app.choice

    objectName: "choicePage"
    context: page.choice.context
    title: page.choice.name
    demo: page.choice.demo
    onBackWanted: page.app.navigator.back()

    ScrollColumn {
        anchors.fill: parent
        spacing: Look.margin

        Item {
            width: parent.width
            implicitHeight: Math.max(mark.height, word.implicitHeight)

            VerdictMark {
                id: mark

                objectName: "verdict"
                anchors.verticalCenter: parent.verticalCenter
                width: 7 * Look.pixelsPerMm
                height: width
                verdict: page.choice.verdict
                inkColor: Look.ink
                careColor: Look.honey
                barColor: Look.rust
            }

            PlainText {
                id: word

                objectName: "verdictWord"
                anchors.verticalCenter: parent.verticalCenter
                anchors.left: mark.right
                anchors.leftMargin: Look.margin * 0.8
                anchors.right: parent.right
                text: page.choice.verdictWord
                font.bold: true
                font.pixelSize: Look.buttonSize
            }
        }

        ChoiceReasons {
            width: parent.width
            choice: page.choice
        }

        PlainText {
            objectName: "courseLine"
            width: parent.width
            text: page.choice.courseLine
        }

        CautionList {
            width: parent.width
            sentences: page.choice.cautions
        }

        ChoiceOutlook {
            width: parent.width
            choice: page.choice
        }
    }

    actions: MainButton {
        objectName: "mainAction"
        width: parent.width
        focus: true
        text: qsTr("Record this treatment")
        detail: page.choice.waitText
        onClicked: page.choice.record()
    }
}
