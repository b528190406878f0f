// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// Did it work?
PageFrame {
    id: page

    required property App app
    readonly property CheckController check: page.app.check

    objectName: "checkPage"
    context: page.check.context
    title: page.check.headline
    demo: page.check.demo
    onBackWanted: page.app.navigator.back()

    ScrollColumn {
        anchors.fill: parent
        spacing: Look.margin

        PlainText {
            objectName: "reading"
            width: parent.width
            text: page.check.reading
            font.pixelSize: Look.buttonSize
        }

        PlainText {
            objectName: "next"
            width: parent.width
            text: page.check.next
            font.bold: true
        }

        CautionList {
            width: parent.width
            sentences: page.check.notes
        }

        CheckSlopes {
            width: parent.width
            visible: page.check.hasPicture
            check: page.check
        }

        Repeater {
            model: page.check.facts

            FactRow {
                width: parent ? parent.width : 0
                required title
                required detail
                required note
            }
        }

        SideButton {
            objectName: "sources"
            width: parent.width
            text: qsTr("Where this comes from")
            onClicked: page.check.openSource()
        }
    }

    actions: MainButton {
        objectName: "mainAction"
        width: parent.width
        focus: true
        text: page.check.mainAction
        onClicked: page.check.act()
    }
}
