// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Templates as T
import Halfcup
import Halfcup.Touch

// A line to type, with its name over it and what it means or what is wrong under it.
Column {
    id: root

    required property string label
    property string hint
    property alias text: field.text
    property alias fieldName: field.objectName
    property alias inputMethodHints: field.inputMethodHints
    property alias maximumLength: field.maximumLength

    signal typed // with every key
    signal edited
    signal accepted

    spacing: 4

    PlainText {
        width: parent.width
        text: root.label
        font.weight: Font.Medium
        Accessible.ignored: true
    }

    T.TextField {
        id: field

        width: parent.width
        implicitHeight: Look.touchHeight
        padding: Look.margin * 0.8
        color: Look.ink
        selectionColor: Look.action
        selectedTextColor: Look.actionInk
        font.family: Look.fontFamily
        font.pixelSize: Look.buttonSize
        selectByMouse: true
        verticalAlignment: TextInput.AlignVCenter
        onTextEdited: root.typed()
        onEditingFinished: root.edited()
        onAccepted: root.accepted()

        Accessible.name: root.label
        Accessible.description: root.hint

        background: Rectangle {
            radius: Look.corner / 2
            color: Look.field
            border.width: field.activeFocus ? 3 : Look.hairline
            border.color: field.activeFocus ? Look.action : Look.ink
        }
    }

    QuietText {
        width: parent.width
        text: root.hint
    }
}
