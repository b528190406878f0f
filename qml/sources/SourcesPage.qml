// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// The values that the app did not measure, each with its source.
PageFrame {
    id: page

    required property App app
    readonly property SourcesController sources: page.app.sources

    objectName: "sourcesPage"
    demo: page.app.here.demo
    context: qsTr("Where this comes from")
    title: page.sources.topic
    onBackWanted: page.app.navigator.back()

    ScrollColumn {
        anchors.fill: parent
        spacing: Look.gap

        PlainText {
            objectName: "pageText"
            width: parent.width
            visible: text !== ""
            text: page.sources.pageText
            bottomPadding: 6 // Markdown is measured a few pixels short
            textFormat: Text.MarkdownText // a page of our own, never the keeper's or a stranger's text
        }

        Repeater {
            model: page.sources.values

            SourceRow {
                width: parent ? parent.width : 0
                required title
                required detail
                required note
            }
        }

        HeadText {
            width: parent.width
            text: qsTr("More")
        }

        ChoiceList {
            width: parent.width
            rowName: "topic"
            model: page.sources.topics
            onPicked: key => page.sources.show(key)
        }
    }

    actions: MainButton {
        objectName: "mainAction"
        width: parent.width
        focus: true
        text: qsTr("Back")
        onClicked: page.app.navigator.back()
    }
}
