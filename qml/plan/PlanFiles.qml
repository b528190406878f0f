// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// The files from other phones that lie in this phone's folders.
ScrollColumn {
    id: root

    required property PlanController plan

    ProblemText {
        width: parent.width
        text: root.plan.problem
    }

    PlainText {
        objectName: "filesLine"
        width: parent.width
        text: root.plan.filesLine
        wrapMode: Text.WrapAtWordBoundaryOrAnywhere
    }

    ChoiceList {
        width: parent.width
        pickable: false
        rowName: "file"
        model: root.plan.files
        onPicked: key => root.plan.openFile(key)
    }
}
