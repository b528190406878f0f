// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// What was taken in, or taken back.
ScrollColumn {
    id: root

    required property PlanController plan

    ProblemText {
        width: parent.width
        text: root.plan.problem
    }

    PlainText {
        objectName: "result"
        width: parent.width
        text: root.plan.result
        font.weight: Font.Medium
        wrapMode: Text.WrapAtWordBoundaryOrAnywhere
    }

    QuietText {
        width: parent.width
        text: root.plan.fileName
        wrapMode: Text.WrapAtWordBoundaryOrAnywhere
    }

    HeadText {
        width: parent.width
        visible: root.plan.toLookAt.count > 0
        text: qsTr("Look at what changed")
    }

    ChoiceList {
        width: parent.width
        rowName: "lookAt"
        pickable: false
        model: root.plan.toLookAt
        onPicked: key => root.plan.openHistory(key)
    }
}
