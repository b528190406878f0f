// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// A field of the record: a text, a number, or a day.
Column {
    id: root

    required property string key
    required property string label
    required property string hint
    required property int kind // a FieldListModel.Kind
    required property string text

    signal edited(string text)
    signal moved(int days)

    DayField {
        width: parent.width
        visible: root.kind === FieldListModel.Day
        label: root.label
        hint: root.hint
        fieldName: visible ? root.key : ""
        text: root.text
        onEdited: text => root.edited(text)
        onMoved: days => root.moved(days)
    }

    LabelledField {
        id: field

        width: parent.width
        visible: root.kind !== FieldListModel.Day
        label: root.label
        hint: root.hint
        fieldName: visible ? root.key : ""
        maximumLength: 500 // as much as is kept of a field
        inputMethodHints: root.kind === FieldListModel.Number ? Qt.ImhFormattedNumbersOnly : Qt.ImhNone
        text: root.text
        onEdited: root.edited(field.text)
    }
}
