// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// Supers, brood, strength and floor.
Column {
    id: root

    required property SituationController situation

    spacing: Look.margin

    OptionList {
        width: parent.width
        title: qsTr("Supers")
        note: root.situation.supersNote
        listName: "supers"
        model: root.situation.supers
        onPicked: key => root.situation.pickSupers(key)
    }

    OptionList {
        width: parent.width
        title: qsTr("Brood")
        note: root.situation.broodNote
        listName: "brood"
        model: root.situation.brood
        onPicked: key => root.situation.pickBrood(key)
    }

    OptionList {
        width: parent.width
        title: qsTr("Floor")
        note: root.situation.floorNote
        listName: "floor"
        model: root.situation.floors
        onPicked: key => root.situation.pickFloor(key)
    }

    LabelledField {
        id: frames

        width: parent.width
        visible: root.situation.asksStrength
        label: qsTr("Frames covered with bees")
        hint: root.situation.framesNote
        fieldName: "frames"
        inputMethodHints: Qt.ImhFormattedNumbersOnly
        text: root.situation.frames
        onEdited: root.situation.typeFrames(frames.text)
    }
}
