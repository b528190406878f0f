// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// The hives of a yard where they stand. Touched, a hive says how it stands; while hives are moved, the next touch says
// where it stands.
PageFrame {
    id: page

    required property App app
    readonly property YardPlanController plan: page.app.yardPlan

    objectName: "yardPlanPage"
    context: page.plan.yardName
    title: page.plan.moving ? qsTr("Move hives") : qsTr("Plan of the yard")
    subtitle: page.plan.line
    demo: page.plan.demo
    cornerText: page.plan.moving ? qsTr("By steps") : page.plan.hasHives ? qsTr("Move hives") : ""
    onBackWanted: page.plan.back()
    onCornerPressed: {
        if (page.plan.moving) {
            page.plan.startSteps();
            page.cover = "steps";
        } else {
            page.plan.startMoving();
        }
    }

    ScrollColumn {
        anchors.fill: parent

        YardPlanItem {
            id: picture

            objectName: "plan"
            width: parent.width
            implicitHeight: drawnHeight
            picture: page.plan.picture
            legend: !page.plan.moving
            dusk: Look.dusk
            fontFamily: Look.fontFamily
            normalSize: Look.bodySize
            smallSize: Look.smallSize
            Accessible.role: Accessible.Graphic
            Accessible.name: page.plan.spoken
            onTouched: (key, onGround, eastM, northM) => page.plan.touched(key, onGround, eastM, northM)

            TapHandler {
                onTapped: point => picture.touch(point.position.x, point.position.y, Look.touchHeight / 2)
            }
        }
    }

    actions: MainButton {
        objectName: "mainAction"
        width: parent.width
        focus: true
        text: page.plan.mainAction
        detail: page.plan.mainDetail
        onClicked: page.plan.act()
    }

    sheets: YardPlanSteps {
        shown: page.cover === "steps"
        plan: page.plan
        onDone: page.cover = ""
    }
}
