// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// Before anything else, once: what this app is not.
PageFrame {
    id: page

    required property App app
    readonly property SetupController setup: page.app.setup

    objectName: "firstStartPage"
    hasBack: page.setup.knowsWhatThisIsNot
    demo: page.app.here.demo
    title: page.setup.whatThisIsNotTitle
    onBackWanted: page.app.navigator.back()

    ScrollColumn {
        anchors.fill: parent

        PlainText {
            objectName: "whatThisIsNot"
            width: parent.width
            text: page.setup.whatThisIsNot
            bottomPadding: 6 // Markdown is measured a few pixels short
            textFormat: Text.MarkdownText // a page of our own, never the keeper's or a stranger's text
        }
    }

    actions: MainButton {
        objectName: "mainAction"
        width: parent.width
        focus: true
        text: qsTr("Understood, go on")
        onClicked: page.setup.understoodWhatThisIsNot()
    }
}
