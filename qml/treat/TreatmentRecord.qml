// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// The record as it is kept.
Column {
    id: root

    required property TreatmentController treatment

    signal removeWanted

    spacing: Look.gap

    PlainText {
        objectName: "statusLine"
        width: parent.width
        text: root.treatment.statusLine
        font.bold: true
        font.pixelSize: Look.buttonSize
    }

    CautionText {
        objectName: "honeyLine"
        width: parent.width
        text: root.treatment.honeyLine
    }

    Repeater {
        model: root.treatment.facts

        FactRow {
            width: root.width
            required title
            required detail
            required note
        }
    }

    SideButton {
        objectName: "didItWork"
        width: parent.width
        visible: root.treatment.canTakeOut
        text: qsTr("Did it work?")
        onClicked: root.treatment.check()
    }

    SideButton {
        objectName: "removeTreatment"
        width: parent.width
        text: qsTr("Remove this record")
        onClicked: root.removeWanted()
    }
}
