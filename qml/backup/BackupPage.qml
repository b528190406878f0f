// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// Backups: made, found again, put back.
PageFrame {
    id: page

    required property App app
    readonly property BackupController backup: page.app.backup

    objectName: "backupPage"
    title: qsTr("Keep safe")
    subtitle: page.backup.lastLine
    demo: page.app.here.demo
    onBackWanted: page.app.navigator.back()

    ScrollColumn {
        anchors.fill: parent
        spacing: Look.gap

        ResultText {
            width: parent.width
            failed: page.backup.failed
            text: page.backup.result
        }

        PlainText {
            objectName: "newLine"
            width: parent.width
            visible: page.backup.newLine !== ""
            text: page.backup.newLine
            font.bold: page.backup.reminder !== ""
        }

        QuietText {
            objectName: "placeLine"
            width: parent.width
            visible: page.backup.placeLine !== "" && page.backup.result === ""
            text: page.backup.placeLine
            wrapMode: Text.WrapAtWordBoundaryOrAnywhere
        }

        PlainText {
            width: parent.width
            text: page.backup.whyLine
        }

        CautionText {
            width: parent.width
            text: qsTr("It holds the exact places of your hives. Give it to nobody.")
        }

        HeadText {
            width: parent.width
            visible: page.backup.backups.count > 0
            text: qsTr("Backups on this phone")
        }

        ChoiceList {
            width: parent.width
            visible: page.backup.backups.count > 0
            pickable: false
            rowName: "backup"
            model: page.backup.backups
            onPicked: key => page.backup.pick(key)
        }

        SideButton {
            objectName: "chooseFile"
            width: parent.width
            visible: page.backup.canChoose
            text: qsTr("Choose one that lies elsewhere")
            onClicked: page.backup.chooseFile()
        }
    }

    Connections {
        target: page.backup

        function onPickedChanged(): void {
            page.cover = "contents";
        }
    }

    actions: MainButton {
        objectName: "mainAction"
        width: parent.width
        focus: true
        text: qsTr("Make a backup")
        detail: qsTr("one file, checked")
        onClicked: page.backup.makeBackup()
    }

    sheets: BackupSheets {
        backup: page.backup
        cover: page.cover
        onClosed: page.cover = ""
        onAsked: page.cover = "ask"
    }
}
