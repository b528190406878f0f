// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// What lies over the page of backups: what is in one, and whether to put it back.
Item {
    id: root

    required property BackupController backup
    required property string cover

    signal closed
    signal asked

    anchors.fill: parent

    Sheet {
        shown: root.cover === "contents"
        title: root.backup.pickedTitle
        actions: [
            SideButton {
                objectName: "putBack"
                width: parent.width
                visible: root.backup.canPutBack
                text: qsTr("Put this one back")
                onClicked: root.asked()
            },
            MainButton {
                objectName: "closeContents"
                width: parent.width
                text: qsTr("Leave it")
                onClicked: root.closed()
            }
        ]

        ProblemText {
            width: parent.width
            text: root.backup.pickedProblem
        }

        Repeater {
            model: root.backup.contents

            FactRow {
                width: parent ? parent.width : 0
                required title
                required detail
                required note
            }
        }
    }

    Sheet {
        shown: root.cover === "ask"
        title: qsTr("Put this one back?")
        sentence: root.backup.question
        actions: [
            SideButton {
                objectName: "putItBack"
                width: parent.width
                text: qsTr("Put it back")
                onClicked: {
                    root.closed();
                    root.backup.putBack();
                }
            },
            MainButton {
                objectName: "leaveAll"
                width: parent.width
                text: qsTr("Leave all as it is")
                onClicked: root.closed()
            }
        ]
    }
}
