// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// A folder that something else keeps alike on several phones.
PageFrame {
    id: page

    required property App app
    readonly property FolderController folder: page.app.folder

    objectName: "folderPage"
    title: qsTr("Exchange folder")
    subtitle: page.folder.stateLine
    demo: page.app.here.demo
    onBackWanted: page.app.navigator.back()

    ScrollColumn {
        anchors.fill: parent
        spacing: Look.margin

        ProblemText {
            width: parent.width
            text: page.folder.problem
        }

        Repeater {
            model: page.folder.lines

            PlainText {
                required property string modelData

                width: parent.width
                text: modelData
                wrapMode: Text.WrapAtWordBoundaryOrAnywhere
            }
        }

        PlainText {
            width: parent.width
            text: qsTr("Each phone puts what it records into a file of its own in this folder, and reads the files of the others. Let any program that keeps folders alike carry it from phone to phone.")
        }

        LabelledField {
            id: path

            fieldName: "folderPath"
            width: parent.width
            label: qsTr("Folder")
            hint: page.folder.on ? qsTr("To use another one, stop using this first.") : qsTr("It is made where there is none.")
            text: page.folder.folder
            enabled: !page.folder.on
            maximumLength: 1000
        }

        CautionText {
            width: parent.width
            text: qsTr("It holds the exact places of your hives. Whoever reads the folder knows them.")
        }
    }

    actions: [
        SideButton {
            objectName: "stopFolder"
            width: parent.width
            visible: page.folder.on
            text: qsTr("Stop using this folder")
            onClicked: page.folder.stop()
        },
        MainButton {
            objectName: "mainAction"
            width: parent.width
            focus: true
            text: page.folder.on ? qsTr("Exchange now") : qsTr("Use this folder")
            detail: page.folder.on ? "" : qsTr("from now on, whenever the app is opened")
            onClicked: page.folder.on ? page.folder.exchangeNow() : page.folder.use(path.text)
        }
    ]
}
