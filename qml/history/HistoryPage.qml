// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// What a record was before. Touching a past value asks whether to put it back.
PageFrame {
    id: page

    required property App app
    readonly property HistoryController history: page.app.history

    objectName: "historyPage"
    context: page.history.context
    title: qsTr("What changed")
    demo: page.history.demo
    onBackWanted: page.app.navigator.back()

    ScrollList {
        anchors.fill: parent
        model: page.history.values

        header: Column {
            width: ListView.view ? ListView.view.width : implicitWidth
            spacing: Look.margin * 0.6
            bottomPadding: Look.gap

            ResultText {
                width: parent.width
                failed: page.history.failed
                text: page.history.result
            }

            PlainText {
                objectName: "removedLine"
                width: parent.width
                visible: page.history.removed
                text: qsTr("It was removed and is in no list now. Nothing of it was thrown away.")
            }

            QuietText {
                width: parent.width
                text: page.history.values.count > 0 ? qsTr("Newest first. Touch an earlier value to put it back.") : qsTr("Nothing was changed since it was written down.")
            }
        }

        delegate: HistoryRow {
            id: row

            onPicked: {
                page.history.ask(row.key);
                page.cover = "putBack";
            }
        }
    }

    actions: MainButton {
        objectName: "mainAction"
        width: parent.width
        focus: true
        text: page.history.removed ? qsTr("Bring it back") : qsTr("Back")
        onClicked: page.history.removed ? page.history.bringBack() : page.app.navigator.back()
    }

    sheets: Sheet {
        shown: page.cover === "putBack"
        title: qsTr("Put this back?")
        sentence: page.history.question
        actions: [
            SideButton {
                objectName: "leaveIt"
                width: parent.width
                text: qsTr("Leave it as it is")
                onClicked: page.cover = ""
            },
            MainButton {
                objectName: "putBack"
                width: parent.width
                text: qsTr("Put this back")
                onClicked: {
                    page.history.putBack();
                    page.cover = "";
                }
            }
        ]
    }
}
