// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// Which colonies get it.
Sheet {
    id: sheet

    required property TreatmentController treatment

    signal done

    title: qsTr("Which colonies get it?")
    sentence: sheet.treatment.coloniesLine
    actions: MainButton {
        objectName: "coloniesDone"
        width: parent.width
        text: qsTr("Done")
        onClicked: sheet.done()
    }

    SideButton {
        objectName: "allColonies"
        width: parent.width
        text: qsTr("All of them")
        onClicked: sheet.treatment.pickAllColonies()
    }

    Repeater {
        id: rows

        model: sheet.treatment.colonies

        CheckRow {
            id: row

            required property int index
            required property string key
            required title
            required chosen

            objectName: "gets-" + row.title
            ruled: row.index < rows.count - 1
            onClicked: sheet.treatment.toggleColony(row.key)
        }
    }
}
