// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// A day to type, and a day on or back by touch.
Column {
    id: root

    required property string label
    required property string hint
    required property string fieldName // with Earlier and Later after it, the names of the buttons for tests
    property alias text: field.text

    signal edited(string text)
    signal moved(int days)

    spacing: Look.gap

    LabelledField {
        id: field

        width: parent.width
        label: root.label
        hint: root.hint
        fieldName: root.fieldName
        inputMethodHints: Qt.ImhNoPredictiveText
        onEdited: root.edited(field.text)
    }

    SideRow {
        width: parent.width

        SideButton {
            objectName: root.fieldName + "Earlier"
            text: qsTr("− 1 day")
            spoken: qsTr("%1: a day earlier").arg(root.label)
            onClicked: root.moved(-1)
        }

        SideButton {
            objectName: root.fieldName + "Later"
            text: qsTr("+ 1 day")
            spoken: qsTr("%1: a day later").arg(root.label)
            onClicked: root.moved(1)
        }
    }
}
