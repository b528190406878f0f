// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// A table of earlier washes: which file, which column is what, what it would be. Nothing is kept before the last touch.
PageFrame {
    id: page

    required property App app
    readonly property ImportController table: page.app.tableImport

    objectName: "importPage"
    context: page.table.fileName
    title: page.table.title
    onBackWanted: page.table.back()

    ImportFiles {
        anchors.fill: parent
        visible: page.table.step === ImportController.Files
        table: page.table
    }

    ImportColumns {
        id: columns

        anchors.fill: parent
        visible: page.table.step === ImportController.Columns
        table: page.table
        onFieldWanted: key => {
            page.table.typeYard(columns.typedYard);
            page.table.pickField(key);
            page.cover = "column";
        }
    }

    ImportPreview {
        anchors.fill: parent
        visible: page.table.step === ImportController.Preview
        table: page.table
    }

    ScrollColumn {
        anchors.fill: parent
        visible: page.table.step === ImportController.Done

        PlainText {
            objectName: "result"
            width: parent.width
            text: page.table.result
            font.weight: Font.Medium
        }
    }

    // What is wrong stands beside the button that was touched: above, it may be scrolled out of sight.
    actions: [
        ProblemText {
            width: parent.width
            text: page.table.problem
        },
        SideButton {
            objectName: "chooseFile"
            width: parent.width
            visible: page.table.chooser !== ""
            text: page.table.chooser
            onClicked: page.table.chooseFile()
        },
        MainButton {
            objectName: "mainAction"
            width: parent.width
            focus: true
            visible: page.table.mainAction !== ""
            text: page.table.mainAction
            onClicked: {
                if (page.table.asksYard)
                    page.table.typeYard(columns.typedYard);
                page.table.act();
            }
        }
    ]

    sheets: Sheet {
        shown: page.cover === "column"
        title: page.table.fieldTitle
        sentence: qsTr("Which column holds it?")
        actions: SideButton {
            objectName: "leaveColumn"
            width: parent.width
            text: qsTr("Leave it as it is")
            onClicked: page.cover = ""
        }

        ChoiceList {
            width: parent.width
            rowName: "column"
            model: page.table.columns
            onPicked: key => {
                page.cover = "";
                page.table.pickColumn(key);
            }
        }
    }
}
