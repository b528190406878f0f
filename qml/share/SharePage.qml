// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// What leaves the phone, and the demo that comes in.
PageFrame {
    id: page

    required property App app
    readonly property ShareController share: page.app.share

    objectName: "sharePage"
    demo: page.app.here.demo
    title: qsTr("Share")
    subtitle: page.share.samplesLine
    onBackWanted: page.app.navigator.back()

    ScrollColumn {
        anchors.fill: parent
        spacing: Look.gap

        ResultText {
            width: parent.width
            failed: page.share.failed
            text: page.share.result
        }

        ChoiceRow {
            objectName: "importTable"
            title: qsTr("A table of earlier washes")
            detail: qsTr("take it in from a spreadsheet")
            onClicked: page.app.navigator.open(Navigator.ImportTable)
        }

        ChoiceRow {
            objectName: "keepSafe"
            title: qsTr("Keep safe")
            detail: page.app.backup.lastLine
            note: page.app.backup.reminder
            onClicked: page.app.navigator.open(Navigator.Backup)
        }

        ChoiceRow {
            objectName: "forPeople"
            title: qsTr("For people")
            detail: qsTr("tables, a map, a calendar, a report")
            onClicked: page.app.navigator.open(Navigator.Export)
        }
    }

    actions: [
        SideButton {
            objectName: "loadDemo"
            width: parent.width
            visible: !page.share.demoLoaded
            text: qsTr("Load the demo")
            onClicked: page.share.loadDemo()
        },
        MainButton {
            objectName: "mainAction"
            width: parent.width
            focus: true
            text: qsTr("For people")
            detail: qsTr("tables, a map, a calendar, a report")
            onClicked: page.app.navigator.open(Navigator.Export)
        }
    ]
}
