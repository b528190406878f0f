// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

Item {
    id: root

    required property string key
    required property string title
    required property string detail
    required property string note
    property bool ruled: true

    signal picked
    signal edited

    implicitHeight: Math.max(choice.implicitHeight, change.implicitHeight)
    LayoutMirroring.enabled: Look.leftHand

    ChoiceRow {
        id: choice

        objectName: "yard-" + root.title
        anchors.left: parent.left
        anchors.right: change.left
        anchors.rightMargin: Look.gap
        height: parent.height
        title: root.title
        detail: root.detail
        note: root.note
        ruled: false
        onClicked: root.picked()
    }

    SideButton {
        id: change

        objectName: "change-" + root.title
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        width: Look.touchHeight
        quiet: true
        fontSize: Look.bodySize
        text: qsTr("Change")
        spoken: qsTr("Change %1").arg(root.title)
        onClicked: root.edited()
    }

    Rule {
        y: parent.height + Look.gap / 2
        width: parent.width
        visible: root.ruled
    }
}
