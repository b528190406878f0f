// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// The lines of a yard: today's, those of regions to follow, and what they were until now.
PageFrame {
    id: page

    required property App app
    readonly property LinesController lines: page.app.lines

    objectName: "yardLinesPage"
    context: page.lines.yardName
    title: qsTr("Lines through the year")
    demo: page.lines.demo
    onBackWanted: page.app.navigator.back()

    ScrollColumn {
        anchors.fill: parent
        spacing: Look.gap

        FactRow {
            width: parent.width
            title: qsTr("Treat line")
            detail: page.lines.todayLine
            note: page.lines.todaySource
        }

        PlainText {
            width: parent.width
            text: page.lines.ownLine
        }

        HeadText {
            width: parent.width
            text: qsTr("Whose figures to follow")
        }

        ChoiceList {
            width: parent.width
            rowName: "region"
            model: page.lines.regions
            onPicked: key => page.lines.follow(key)
        }

        HeadText {
            width: parent.width
            text: qsTr("Lines until now")
        }

        QuietText {
            width: parent.width
            text: qsTr("A wash keeps the line it was judged by.")
        }

        Repeater {
            model: page.lines.past

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
}
