// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// What may have been made twice, one pair after the other; and what was joined.
PageFrame {
    id: page

    required property App app
    readonly property SameController same: page.app.same

    objectName: "samePage"
    title: page.same.title
    demo: page.same.demo
    // In the corner, so that both of a pair are in sight on a small phone.
    cornerText: page.same.count > 0 ? qsTr("No, two") : ""
    onBackWanted: page.app.navigator.back()
    onCornerPressed: page.same.no()

    ScrollColumn {
        anchors.fill: parent

        ResultText {
            width: parent.width
            failed: false
            text: page.same.result
        }

        PlainText {
            objectName: "reason"
            width: parent.width
            visible: page.same.count > 0
            text: page.same.reason
        }

        Repeater {
            model: page.same.pair

            delegate: SameOne {
                id: one

                required property int index
                required title
                required detail
                required note

                objectName: "same-" + one.index
                width: parent ? parent.width : 0
            }
        }

        QuietText {
            width: parent.width
            visible: page.same.count > 0
            text: qsTr("Where they are one, it shows the washes, treatments and notes of both. They can be separated again.")
        }

        QuietText {
            width: parent.width
            visible: page.same.count === 0
            text: page.same.joined.count > 0 ? qsTr("Made on two phones, and joined. Touch one to separate it again.") : qsTr("There is nothing to ask about.")
        }

        HeadText {
            width: parent.width
            visible: page.same.joined.count > 0 && page.same.count > 0
            text: qsTr("Shown as one")
        }

        ChoiceList {
            width: parent.width
            rowName: "joined"
            pickable: false
            model: page.same.joined
            onPicked: key => {
                page.same.askSeparate(key);
                page.cover = "separate";
            }
        }
    }

    actions: MainButton {
        objectName: "mainAction"
        width: parent.width
        focus: true
        text: page.same.count > 0 ? qsTr("Yes, the same") : qsTr("Back")
        onClicked: page.same.count > 0 ? page.same.yes() : page.app.navigator.back()
    }

    sheets: Sheet {
        shown: page.cover === "separate"
        title: qsTr("Separate again?")
        sentence: page.same.question
        actions: [
            SideButton {
                objectName: "leaveJoined"
                width: parent.width
                text: qsTr("Leave them as one")
                onClicked: page.cover = ""
            },
            MainButton {
                objectName: "separate"
                width: parent.width
                text: qsTr("Separate again")
                onClicked: {
                    page.same.separate();
                    page.cover = "";
                }
            }
        ]
    }
}
