// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// What is written on a jar that waits.
Sheet {
    id: sheet

    required property App app

    signal closed

    title: qsTr("What is on the jar?")
    sentence: qsTr("Write it on the lid. The time and place of the scoop stay with it.")
    onShownChanged: {
        if (sheet.shown) {
            sheet.app.tray.askLabel(sheet.app.wash.sampleId);
            name.text = sheet.app.tray.proposedLabel;
        }
    }
    actions: [
        SideButton {
            objectName: "washNow"
            width: parent.width
            text: qsTr("Wash it now")
            onClicked: sheet.closed()
        },
        MainButton {
            objectName: "toTray"
            width: parent.width
            focus: true
            text: qsTr("Into the tray")
            onClicked: sheet.app.tray.check(name.text) ? sheet.app.wash.setAside(name.text) : undefined
        }
    ]

    LabelledField {
        id: name

        width: parent.width
        label: qsTr("Number or name")
        fieldName: "jarLabel"
        onTyped: sheet.app.tray.clearProblem()
    }

    ProblemText {
        objectName: "jarProblem"
        width: parent.width
        text: sheet.app.tray.problem
    }
}
