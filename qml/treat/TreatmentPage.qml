// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// One treatment: written down, or as it is kept.
PageFrame {
    id: page

    required property App app
    readonly property TreatmentController treatment: page.app.treatment

    function keep() {
        if (!page.treatment.keep() && page.treatment.questions.length > 0)
            page.cover = "questions";
    }

    function leave() {
        if (!page.treatment.stopEditing())
            page.app.navigator.back();
    }

    objectName: "treatmentPage"
    context: page.treatment.context
    title: page.treatment.title
    demo: page.treatment.demo
    cornerText: page.treatment.editing ? "" : qsTr("Change")
    onBackWanted: page.treatment.typed ? page.cover = "leave" : page.leave()
    onCornerPressed: page.treatment.edit()

    ScrollColumn {
        anchors.fill: parent
        visible: page.treatment.editing

        TreatmentForm {
            width: parent.width
            treatment: page.treatment
            onColoniesWanted: page.cover = "colonies"
        }
    }

    ScrollColumn {
        anchors.fill: parent
        visible: !page.treatment.editing

        TreatmentRecord {
            width: parent.width
            treatment: page.treatment
            onRemoveWanted: page.cover = "remove"
        }
    }

    // What is wrong stands beside the button that found it, wherever the page is scrolled to.
    actions: [
        ProblemText {
            width: parent.width
            text: page.treatment.editing ? page.treatment.problem : ""
        },
        MainButton {
            objectName: "mainAction"
            width: parent.width
            visible: page.treatment.editing
            text: qsTr("Keep this record")
            onClicked: page.keep()
        },
        MainButton {
            objectName: "takenOut"
            width: parent.width
            visible: page.treatment.canTakeOut
            text: qsTr("Taken out today")
            onClicked: page.treatment.takenOutToday()
        },
        MainButton {
            objectName: "check"
            width: parent.width
            visible: !page.treatment.editing && !page.treatment.canTakeOut
            text: qsTr("Did it work?")
            onClicked: page.treatment.check()
        }
    ]

    sheets: TreatmentSheets {
        treatment: page.treatment
        cover: page.cover
        onClosed: page.cover = ""
        onLeaving: page.leave()
    }
}
