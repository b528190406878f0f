// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// One hive moved step by step, for hands and ears that cannot point at a place.
Sheet {
    id: root

    required property YardPlanController plan

    signal done

    title: root.plan.stepTitle
    sentence: root.plan.standLine

    SideButton {
        objectName: "stepNorth"
        anchors.horizontalCenter: parent.horizontalCenter
        width: parent.width / 2
        text: root.plan.northStep
        onClicked: root.plan.step(YardPlanController.North)
    }

    // West is at the left for either hand, as on the plan.
    SideRow {
        width: parent.width
        LayoutMirroring.enabled: false

        SideButton {
            objectName: "stepWest"
            text: root.plan.westStep
            onClicked: root.plan.step(YardPlanController.West)
        }

        SideButton {
            objectName: "stepEast"
            text: root.plan.eastStep
            onClicked: root.plan.step(YardPlanController.East)
        }
    }

    SideButton {
        objectName: "stepSouth"
        anchors.horizontalCenter: parent.horizontalCenter
        width: parent.width / 2
        text: root.plan.southStep
        onClicked: root.plan.step(YardPlanController.South)
    }

    SideRow {
        width: parent.width

        SideButton {
            objectName: "previousHive"
            text: qsTr("Previous hive")
            onClicked: root.plan.pickPrevious()
        }

        SideButton {
            objectName: "nextHive"
            text: qsTr("Next hive")
            onClicked: root.plan.pickNext()
        }
    }

    SideButton {
        objectName: "takeOff"
        width: parent.width
        visible: root.plan.canTakeOff
        text: qsTr("Take its place off the plan")
        onClicked: root.plan.takeOff()
    }

    actions: MainButton {
        objectName: "stepsDone"
        width: parent.width
        text: qsTr("Done")
        onClicked: root.done()
    }
}
