// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

Grid {
    id: keys

    readonly property real keyWidth: (width - 2 * spacing) / 3
    readonly property real keyHeight: (height - 3 * spacing) / 4

    signal digit(string digit)
    signal deleted
    signal done

    columns: 3
    spacing: Look.gap

    Repeater {
        model: ["1", "2", "3", "4", "5", "6", "7", "8", "9"]

        SideButton {
            required property string modelData

            objectName: "key" + modelData
            width: keys.keyWidth
            height: keys.keyHeight
            fontSize: Look.titleSize
            text: modelData
            onClicked: keys.digit(modelData)
        }
    }

    SideButton {
        objectName: "keyDelete"
        width: keys.keyWidth
        height: keys.keyHeight
        text: qsTr("Delete")
        onClicked: keys.deleted()
    }

    SideButton {
        objectName: "key0"
        width: keys.keyWidth
        height: keys.keyHeight
        fontSize: Look.titleSize
        text: "0"
        onClicked: keys.digit("0")
    }

    MainButton {
        objectName: "keyKeep"
        width: keys.keyWidth
        height: keys.keyHeight
        text: qsTr("Keep")
        onClicked: keys.done()
    }
}
