// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// The record as it is written down: first what is needed at the hive, then the rest.
Column {
    id: root

    required property TreatmentController treatment

    signal coloniesWanted

    spacing: Look.margin

    SideButton {
        objectName: "pickColonies"
        width: parent.width
        text: root.treatment.coloniesLine
        onClicked: root.coloniesWanted()
    }

    Repeater {
        model: root.treatment.needed

        TreatmentField {
            width: root.width
            onEdited: text => root.treatment.type(key, text)
            onMoved: days => root.treatment.moveDay(key, days)
        }
    }

    CautionList {
        width: parent.width
        sentences: root.treatment.cautions
    }

    SideButton {
        objectName: "showMore"
        width: parent.width
        visible: !root.treatment.showsMore
        text: qsTr("More for the record")
        onClicked: root.treatment.showsMore = true
    }

    Repeater {
        model: root.treatment.showsMore ? root.treatment.more : null

        TreatmentField {
            width: root.width
            onEdited: text => root.treatment.type(key, text)
            onMoved: days => root.treatment.moveDay(key, days)
        }
    }
}
