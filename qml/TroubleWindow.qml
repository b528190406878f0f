// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// Instead of the app where its records cannot be opened: what is wrong, and what can be done about it.
Window {
    id: window

    required property RecoveryController recovery

    width: 360
    height: 740
    visible: true
    title: qsTr("Halfcup")
    color: Look.page

    Connections {
        target: window.recovery
        function onCloseWanted() {
            window.close();
        }
    }

    // By the window's own size, as in Main.qml.
    Item {
        width: window.width
        height: window.height

        Sheet {
            shown: window.recovery.question === ""
            title: window.recovery.title
            sentence: window.recovery.sentence
            actions: [
                SideButton {
                    objectName: "rescue"
                    width: parent.width
                    visible: window.recovery.canRescue
                    text: qsTr("Save what can be read")
                    onClicked: window.recovery.rescue()
                },
                MainButton {
                    objectName: "close"
                    width: parent.width
                    focus: true
                    text: window.recovery.mainAction
                    onClicked: window.recovery.start()
                }
            ]

            ProblemText {
                width: parent.width
                text: window.recovery.problem
            }

            QuietText {
                objectName: "detail"
                width: parent.width
                text: window.recovery.detail
                wrapMode: Text.WrapAtWordBoundaryOrAnywhere
            }

            HeadText {
                width: parent.width
                visible: window.recovery.backups.count > 0
                text: qsTr("Or put a backup back")
            }

            ChoiceList {
                width: parent.width
                visible: window.recovery.backups.count > 0
                pickable: false
                rowName: "backup"
                model: window.recovery.backups
                onPicked: key => window.recovery.pick(key)
            }
        }

        Sheet {
            shown: window.recovery.question !== ""
            title: qsTr("Put this one back?")
            sentence: window.recovery.question
            actions: [
                SideButton {
                    objectName: "putItBack"
                    width: parent.width
                    text: qsTr("Put it back")
                    onClicked: window.recovery.putBack()
                },
                MainButton {
                    objectName: "leaveAll"
                    width: parent.width
                    text: qsTr("Leave all as it is")
                    onClicked: window.recovery.pick("")
                }
            ]
        }
    }
}
