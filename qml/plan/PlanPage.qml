// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// A file from another phone: which one, what it would do, what it did. Nothing is kept before the last touch.
PageFrame {
    id: page

    required property App app
    readonly property PlanController plan: page.app.share.plan

    objectName: "planPage"
    title: page.plan.title
    onBackWanted: page.plan.back()

    PlanFiles {
        anchors.fill: parent
        visible: page.plan.step === PlanController.Files
        plan: page.plan
    }

    ScrollColumn {
        anchors.fill: parent
        visible: page.plan.step === PlanController.Reading

        PlainText {
            objectName: "reading"
            width: parent.width
            text: qsTr("%1 is large. This takes a moment.").arg(page.plan.fileName)
            wrapMode: Text.WrapAtWordBoundaryOrAnywhere
        }
    }

    PlanList {
        anchors.fill: parent
        visible: page.plan.step === PlanController.Plan
        plan: page.plan
    }

    PlanDone {
        anchors.fill: parent
        visible: page.plan.step === PlanController.Done
        plan: page.plan
    }

    actions: [
        SideButton {
            objectName: "chooseFile"
            width: parent.width
            visible: page.plan.chooser !== ""
            text: page.plan.chooser
            onClicked: page.plan.chooseFile()
        },
        SideButton {
            objectName: "maybeSame"
            width: parent.width
            visible: page.plan.step === PlanController.Done && page.app.same.count > 0
            text: page.app.same.countLine
            onClicked: page.app.same.open()
        },
        SideButton {
            objectName: "undo"
            width: parent.width
            visible: page.plan.step === PlanController.Done && page.plan.canUndo
            text: qsTr("Take it back")
            onClicked: page.cover = "undo"
        },
        MainButton {
            objectName: "mainAction"
            width: parent.width
            focus: true
            visible: page.plan.mainAction !== ""
            text: page.plan.mainAction
            onClicked: page.plan.act()
        }
    ]

    sheets: Sheet {
        shown: page.cover === "undo"
        title: qsTr("Take it back?")
        sentence: page.plan.undoQuestion
        actions: [
            SideButton {
                objectName: "takeItBack"
                width: parent.width
                text: qsTr("Take it back")
                onClicked: {
                    page.cover = "";
                    page.plan.undo();
                }
            },
            MainButton {
                objectName: "leaveIt"
                width: parent.width
                text: qsTr("Leave it")
                onClicked: page.cover = ""
            }
        ]
    }
}
