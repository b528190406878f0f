// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// What the keeper's own counted scoops say, beside the book.
PageFrame {
    id: page

    required property App app
    readonly property OwnScoopsController scoops: page.app.ownScoops
    property string touched // the count that is asked about

    objectName: "ownScoopsPage"
    title: qsTr("Your scoops")
    subtitle: page.scoops.summary
    onBackWanted: page.app.navigator.back()

    ScrollColumn {
        anchors.fill: parent
        spacing: Look.margin

        PlainText {
            objectName: "rangeLine"
            width: parent.width
            text: page.scoops.rangeLine
        }

        ChoiceList {
            width: parent.width
            visible: page.scoops.counts.count > 0
            pickable: false
            rowName: "count"
            model: page.scoops.counts
            onPicked: key => {
                page.touched = key;
                page.cover = "takeOut";
            }
        }

        PlainText {
            width: parent.width
            visible: page.scoops.counts.count === 0
            text: qsTr("After a wash, touch \u201CCount these bees\u201D under the answer. Five scoops tell your hand from another.")
        }

        HeadText {
            width: parent.width
            text: qsTr("What others count")
        }

        Repeater {
            model: page.scoops.bookFigures

            FactRow {
                width: parent ? parent.width : 0
                required title
                required detail
                required note
            }
        }
    }

    actions: MainButton {
        objectName: "mainAction"
        width: parent.width
        focus: true
        text: qsTr("Done")
        onClicked: page.app.navigator.back()
    }

    sheets: Sheet {
        shown: page.cover === "takeOut"
        title: qsTr("Leave this scoop out?")
        sentence: qsTr("It no longer counts for your figure. The history keeps it, and the wash it belongs to stays as it is.")
        actions: [
            SideButton {
                objectName: "leaveItIn"
                width: parent.width
                text: qsTr("Leave it in")
                onClicked: page.cover = ""
            },
            MainButton {
                objectName: "takeItOut"
                width: parent.width
                text: qsTr("Leave it out")
                onClicked: {
                    page.scoops.takeOut(page.touched);
                    page.cover = "";
                }
            }
        ]
    }
}
