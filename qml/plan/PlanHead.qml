// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// The file as a whole: from whom, what it brings, what is wrong with it.
Column {
    id: root

    required property PlanController plan

    spacing: Look.margin * 0.8
    bottomPadding: Look.margin

    ProblemText {
        width: parent.width
        text: root.plan.problem
    }

    PlainText {
        objectName: "headline"
        width: parent.width
        text: root.plan.headline
        font.bold: true
    }

    QuietText {
        objectName: "fileName"
        width: parent.width
        text: root.plan.fileName
        wrapMode: Text.WrapAtWordBoundaryOrAnywhere
    }

    QuietText {
        objectName: "writtenLine"
        width: parent.width
        text: root.plan.writtenLine
    }

    CautionList {
        objectName: "troubles"
        width: parent.width
        sentences: root.plan.troubles
    }

    Repeater {
        model: root.plan.counts

        FactRow {
            required property int index

            objectName: "count-" + index
            width: root.width
            required title
            required detail
            required note
        }
    }

    CautionList {
        objectName: "remarks"
        width: parent.width
        sentences: root.plan.remarks
    }
}
