// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// One of two or three, from a model, with a note of where the answer comes from.
Column {
    id: root

    required property string title
    required property string note
    required property string listName // with the key after it, the name of an option for tests
    property alias model: rows.model

    signal picked(string key)

    spacing: Look.margin * 0.6

    HeadText {
        width: parent.width
        text: root.title
    }

    // Two side by side: three do not fit on the smallest phone.
    SideRow {
        width: parent.width
        columns: 2

        Repeater {
            id: rows

            delegate: OptionButton {
                id: option

                required property string key
                required property string title

                required chosen

                objectName: root.listName + "-" + option.key
                text: option.title
                spoken: root.title + ": " + option.title
                onClicked: root.picked(option.key)
            }
        }
    }

    QuietText {
        width: parent.width
        visible: root.note !== ""
        text: root.note
    }
}
