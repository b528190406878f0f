// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// One of two.
Column {
    id: root

    required property string title
    required property string first
    required property string second
    required property bool secondChosen
    required property string pairName // with First and Second after it, the names of the two for tests

    signal picked(bool isSecond)

    spacing: Look.margin * 0.6

    HeadText {
        width: parent.width
        text: root.title
    }

    SideRow {
        width: parent.width

        OptionButton {
            objectName: root.pairName + "First"
            text: root.first
            spoken: root.title + ": " + root.first
            chosen: !root.secondChosen
            onClicked: root.picked(false)
        }

        OptionButton {
            objectName: root.pairName + "Second"
            text: root.second
            spoken: root.title + ": " + root.second
            chosen: root.secondChosen
            onClicked: root.picked(true)
        }
    }
}
