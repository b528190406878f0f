// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// What lies over the page of a treatment: its colonies, what must be asked, and whether to remove it.
Item {
    id: root

    required property TreatmentController treatment
    required property string cover

    signal closed
    signal leaving

    anchors.fill: parent

    TreatmentColonies {
        shown: root.cover === "colonies"
        treatment: root.treatment
        onDone: root.closed()
    }

    Sheet {
        shown: root.cover === "questions"
        title: qsTr("Please look again")
        actions: [
            SideButton {
                objectName: "lookAgain"
                width: parent.width
                text: qsTr("Go back and change it")
                onClicked: root.closed()
            },
            MainButton {
                objectName: "keepAllTheSame"
                width: parent.width
                text: qsTr("Keep it all the same")
                onClicked: {
                    root.treatment.keepAllTheSame();
                    root.closed();
                }
            }
        ]

        CautionList {
            objectName: "questions"
            width: parent.width
            sentences: root.treatment.questions
        }
    }

    Sheet {
        shown: root.cover === "leave"
        title: qsTr("Leave without keeping?")
        sentence: qsTr("What you wrote down here is not kept yet.")
        actions: [
            SideButton {
                objectName: "leaveIt"
                width: parent.width
                text: qsTr("Leave without keeping")
                onClicked: {
                    root.closed();
                    root.leaving();
                }
            },
            MainButton {
                objectName: "goOn"
                width: parent.width
                text: qsTr("Go on writing")
                onClicked: root.closed()
            }
        ]
    }

    Sheet {
        shown: root.cover === "remove"
        title: qsTr("Remove this record?")
        sentence: qsTr("It leaves the lists. The history keeps it.")
        actions: [
            SideButton {
                objectName: "removeIt"
                width: parent.width
                text: qsTr("Remove it")
                onClicked: {
                    root.closed();
                    root.treatment.remove();
                }
            },
            MainButton {
                objectName: "keepIt"
                width: parent.width
                text: qsTr("Leave it")
                onClicked: root.closed()
            }
        ]
    }
}
