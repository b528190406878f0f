// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// What every step of a wash has: where in the wash it is, Back, and the way out.
PageFrame {
    id: step

    required property App app
    readonly property WashController wash: step.app.wash
    readonly property string leaveText: qsTr("Leave")

    context: step.wash.header
    demo: step.wash.demo
    cornerText: step.leaveText
    onBackWanted: step.wash.back()
    onCornerPressed: step.corner()

    // The way out; a step may have something else in its place.
    function corner() {
        step.cover = "leave";
    }

    sheets: [
        Sheet {
            shown: step.cover === "leave"
            title: qsTr("Leave this count?")
            sentence: qsTr("All you have done is kept. You can go on where you left, also after the phone was off.")
            actions: [
                SideRow {
                    width: parent.width

                    SideButton {
                        objectName: "abandon"
                        text: qsTr("Abandon")
                        onClicked: step.cover = "abandon"
                    }

                    SideButton {
                        objectName: "stay"
                        text: qsTr("Stay here")
                        onClicked: step.cover = ""
                    }
                },
                MainButton {
                    objectName: "leaveAndKeep"
                    width: parent.width
                    focus: true
                    text: qsTr("Leave, keep it")
                    onClicked: step.wash.pause()
                }
            ]
        },
        Sheet {
            shown: step.cover === "abandon"
            title: qsTr("Abandon this count?")
            sentence: qsTr("It is kept as abandoned.")
            actions: [
                SideButton {
                    objectName: "abandonForGood"
                    width: parent.width
                    text: qsTr("Abandon this count")
                    onClicked: step.wash.abandon()
                },
                MainButton {
                    objectName: "goOnWashing"
                    width: parent.width
                    focus: true
                    text: qsTr("Go on with the count")
                    onClicked: step.cover = ""
                }
            ]
        }
    ]
}
