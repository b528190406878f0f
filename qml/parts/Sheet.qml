// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// Lies over a whole page: a question with its answers, or something to fill in.
FocusScope {
    id: sheet

    required property bool shown
    property string title
    property string sentence
    default property alias body: column.data
    property alias actions: actionStrip.actions

    anchors.fill: parent
    visible: sheet.shown
    focus: sheet.shown

    // What lies under it must not be touched through it.
    MouseArea {
        objectName: "backdrop"
        anchors.fill: parent
        Accessible.ignored: true
    }

    Rectangle {
        anchors.fill: parent
        color: Look.page
    }

    ScrollColumn {
        id: words

        anchors.fill: parent
        anchors.margins: Look.margin
        anchors.topMargin: Look.margin * 1.5
        anchors.bottomMargin: actionStrip.height + Look.margin + Look.gap

        TitleText {
            width: parent.width
            text: sheet.title
        }

        PlainText {
            width: parent.width
            text: sheet.sentence
        }

        Column {
            id: column

            width: parent.width
            spacing: Look.gap
        }
    }

    ActionStrip {
        id: actionStrip

        anchors.left: parent.left
        anchors.right: parent.right
        anchors.bottom: parent.bottom
        anchors.margins: Look.margin
        place: sheet.height < Look.roomyHeight ? words.last : null
    }
}
