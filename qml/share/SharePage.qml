// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// What leaves the phone and what comes in: all of it for another phone, files for people, backups, the demo.
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

        SideButton {
            objectName: "showWritten"
            width: parent.width
            visible: page.share.canShowWritten
            text: qsTr("Show it in its folder")
            onClicked: page.share.showWritten()
        }

        ChoiceRow {
            objectName: "takeIn"
            title: qsTr("Take in a file")
            detail: qsTr("from another phone; you see first what it brings")
            onClicked: page.share.takeIn()
        }

        ChoiceRow {
            objectName: "lastTaken"
            visible: page.share.plan.lastLine !== ""
            title: qsTr("Last taken in")
            detail: page.share.plan.lastLine
            note: page.share.plan.lastNote
            onClicked: page.share.openLastTaken()
        }

        ChoiceRow {
            objectName: "exchangeFolder"
            visible: page.share.hasFolders
            title: qsTr("Exchange folder")
            detail: page.app.folder.stateLine
            onClicked: page.app.navigator.open(Navigator.Folder)
        }

        ChoiceRow {
            objectName: "forPeople"
            title: qsTr("For people")
            detail: qsTr("tables, a map, a calendar, a report")
            onClicked: page.app.navigator.open(Navigator.Export)
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
            objectName: "loadDemo"
            visible: !page.share.demoLoaded
            title: qsTr("Load the demo")
            detail: qsTr("two invented yards to try things on")
            ruled: false
            onClicked: page.share.loadDemo()
        }

        QuietText {
            objectName: "markLine"
            width: parent.width
            text: page.share.markLine
        }
    }

    actions: MainButton {
        objectName: "mainAction"
        width: parent.width
        focus: true
        text: qsTr("Write everything for another phone")
        detail: qsTr("whoever gets it knows where your hives stand")
        onClicked: page.share.writeEverything()
    }
}
