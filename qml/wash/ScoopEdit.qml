// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// Another scoop for this wash. Each change counts at once.
Sheet {
    id: sheet

    required property ScoopController scoop

    signal done
    signal typeVolume
    signal typeBees

    title: qsTr("The scoop")

    ChoiceList {
        width: parent.width
        rowName: "scoop"
        model: sheet.scoop.choices
        onPicked: key => sheet.scoop.choose(key)
    }

    SideButton {
        objectName: "typeVolume"
        width: parent.width
        text: qsTr("Type millilitres")
        onClicked: sheet.typeVolume()
    }

    HeadText {
        width: parent.width
        text: qsTr("How the bees lie")
    }

    ChoiceRow {
        objectName: "settled"
        pickable: true
        title: qsTr("Rapped to settle")
        detail: qsTr("struck on the palm until they lie close")
        chosen: sheet.scoop.settled
        onClicked: sheet.scoop.setSettled(true)
    }

    ChoiceRow {
        objectName: "loose"
        pickable: true
        title: qsTr("Loose")
        detail: qsTr("as they were scooped")
        chosen: !sheet.scoop.settled
        onClicked: sheet.scoop.setSettled(false)
    }

    HeadText {
        width: parent.width
        text: sheet.scoop.beesLine
    }

    SideButton {
        objectName: "typeBees"
        width: parent.width
        text: qsTr("Type the bees")
        onClicked: sheet.typeBees()
    }

    actions: MainButton {
        objectName: "scoopDone"
        width: parent.width
        focus: true
        text: qsTr("Use this scoop")
        detail: sheet.scoop.beesLine
        onClicked: sheet.done()
    }
}
