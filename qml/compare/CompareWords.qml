// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// The rows of the picture in words, for those who would rather read or hear them.
Column {
    id: root

    property alias rows: words.model
    property bool shown: false

    visible: words.count > 0
    spacing: Look.margin * 0.6

    SideButton {
        objectName: "inWords"
        width: parent.width
        quiet: true
        text: root.shown ? qsTr("Hide the words") : qsTr("The same in words")
        onClicked: root.shown = !root.shown
    }

    Repeater {
        id: words

        PlainText {
            required property string modelData

            width: root.width
            visible: root.shown
            text: modelData
        }
    }
}
