// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup

// The whole page is the button.
WashStep {
    id: step

    objectName: "countStep"
    title: step.wash.title

    CountFace {
        anchors.fill: parent
        count: step.wash.count
    }

    // Back leads to the way out, too.
    cornerText: bar.narrow ? bar.typeText : step.leaveText

    function corner() {
        step.cover = bar.narrow ? "type" : "leave";
    }

    actions: CountBar {
        id: bar

        pageWidth: step.width
        count: step.wash.count
        onTypeWanted: step.cover = "type"
        onDone: step.wash.endCount()
        onNoneSaid: step.cover = "none"
    }

    sheets: [
        CountPad {
            shown: step.cover === "type"
            count: step.wash.count
            onClosed: step.cover = ""
        },
        Sheet {
            shown: step.cover === "none"
            title: qsTr("None found?")
            sentence: step.wash.count.noneFound
            actions: [
                SideButton {
                    objectName: "goOnCounting"
                    width: parent.width
                    text: qsTr("Go on counting")
                    onClicked: step.cover = ""
                },
                MainButton {
                    objectName: "noneFound"
                    width: parent.width
                    focus: true
                    text: qsTr("None found")
                    onClicked: step.wash.noneWasFound()
                }
            ]
        }
    ]
}
