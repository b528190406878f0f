// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// What exactly, when, and a note.
ScrollColumn {
    id: root

    required property EventController event
    readonly property bool telling: root.event.view === EventController.Telling
    readonly property alias typed: field.text
    readonly property alias note: noteField.text

    signal chosen // the row that was touched is made anew: the page says where the keyboard goes

    function takeDay(): bool {
        return day.take();
    }

    spacing: Look.gap

    ProblemText {
        width: parent.width
        text: root.event.problem
    }

    HeadText {
        width: parent.width
        visible: root.telling && text !== ""
        text: root.event.asks
    }

    ChoiceList {
        width: parent.width
        visible: root.telling && root.event.choices.count > 0
        rowName: "choice"
        model: root.event.choices
        onPicked: key => {
            root.event.choose(key);
            root.chosen();
        }
    }

    LabelledField {
        id: field

        width: parent.width
        visible: root.event.fieldLabel !== "" && (root.telling || !root.event.steps)
        label: root.event.fieldLabel
        hint: root.event.fieldHint
        fieldName: "eventField"
        inputMethodHints: root.event.steps ? Qt.ImhFormattedNumbersOnly : Qt.ImhNone
        text: root.event.fieldText
        onTyped: root.event.type(field.text)
    }

    SideRow {
        width: parent.width
        visible: root.telling && root.event.steps

        SideButton {
            objectName: "fewer"
            text: qsTr("One less")
            onClicked: root.event.fewer()
        }

        SideButton {
            objectName: "more"
            text: qsTr("One more")
            onClicked: root.event.more()
        }
    }

    EventDay {
        id: day

        width: parent.width
        visible: root.telling
        event: root.event
    }

    LabelledField {
        id: noteField

        width: parent.width
        visible: root.event.hasNote
        label: qsTr("Note")
        fieldName: "eventNote"
        text: root.event.note
        onTyped: root.event.typeNote(noteField.text)
    }
}
