// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// What happened to a colony, or to all of a yard: first what, then when and what exactly.
PageFrame {
    id: page

    required property App app
    readonly property EventController event: page.app.event
    readonly property bool picking: page.event.view === EventController.Picking
    readonly property bool kept: page.event.view === EventController.Kept

    objectName: "eventPage"
    context: page.event.context
    title: page.event.title
    subtitle: page.picking ? "" : page.event.dayLine
    demo: page.event.demo
    // What was pressed is gone: without this the keyboard would come up for the note.
    onPickingChanged: main.forceActiveFocus()
    onBackWanted: page.event.back() ? undefined : page.app.navigator.back()

    function keep() {
        if (!details.takeDay())
            return;
        page.event.keep(details.typed, details.note);
        page.cover = page.event.question !== "" ? "question" : "";
    }

    EventKinds {
        anchors.fill: parent
        visible: page.picking
        event: page.event
    }

    EventDetails {
        id: details

        anchors.fill: parent
        visible: !page.picking
        event: page.event
        onChosen: main.forceActiveFocus()
    }

    actions: [
        SideButton {
            objectName: "takeBack"
            width: parent.width
            visible: page.kept
            text: qsTr("Take it back")
            onClicked: page.cover = "takeBack"
        },
        MainButton {
            id: main

            objectName: "mainAction"
            width: parent.width
            focus: true
            text: page.picking ? page.event.likely : qsTr("Keep")
            onClicked: page.picking ? page.event.pick(page.event.likelyKey) : page.keep()
        }
    ]

    sheets: [
        Sheet {
            shown: page.cover === "question"
            title: qsTr("Is that so?")
            sentence: page.event.question
            actions: [
                SideButton {
                    objectName: "notSo"
                    width: parent.width
                    text: qsTr("No, go back")
                    onClicked: page.cover = ""
                },
                MainButton {
                    objectName: "keepAnyway"
                    width: parent.width
                    focus: true
                    text: qsTr("Yes, keep it")
                    onClicked: page.event.keepAnyway() ? page.cover = "" : undefined
                }
            ]
        },
        Sheet {
            shown: page.cover === "takeBack"
            title: qsTr("Take it back?")
            sentence: qsTr("It counts no more for this colony. The history keeps that it was written down.")
            actions: [
                SideButton {
                    objectName: "leaveIt"
                    width: parent.width
                    text: qsTr("Leave it as it is")
                    onClicked: page.cover = ""
                },
                MainButton {
                    objectName: "takeBackForGood"
                    width: parent.width
                    focus: true
                    text: qsTr("Take it back")
                    onClicked: page.event.takeBack() ? page.cover = "" : undefined
                }
            ]
        }
    ]
}
