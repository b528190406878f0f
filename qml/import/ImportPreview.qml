// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// How many of what, the first washes as they will be kept, and every row that is refused or in question.
ScrollColumn {
    id: root

    required property ImportController table

    spacing: Look.margin

    Repeater {
        model: root.table.counts

        FactRow {
            width: parent ? parent.width : 0
            required detail
            required note
        }
    }

    ImportRows {
        width: parent.width
        heading: qsTr("The first of them")
        model: root.table.washes
    }

    ImportRows {
        width: parent.width
        heading: qsTr("In question")
        model: root.table.questions
        more: root.table.moreQuestions
    }

    ChoiceList {
        width: parent.width
        visible: root.table.decisions.count > 0
        rowName: "decision"
        model: root.table.decisions
        onPicked: key => root.table.decide(key)
    }

    ImportRows {
        width: parent.width
        heading: qsTr("Refused")
        model: root.table.refused
        more: root.table.moreRefused
    }

    HeadText {
        width: parent.width
        visible: root.table.remarks.length > 0
        text: qsTr("Taken for granted")
    }

    Repeater {
        model: root.table.remarks

        PlainText {
            required property string modelData

            width: parent ? parent.width : 0
            text: modelData
        }
    }
}
