// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// Over the story of a colony: how it stands, and what can be told of it.
Column {
    id: root

    required property ColonyController colony

    width: ListView.view ? ListView.view.width : implicitWidth
    spacing: Look.margin * 0.6
    bottomPadding: Look.gap

    PlainText {
        objectName: "stateLine"
        width: parent.width
        text: root.colony.stateLine
    }

    QuietText {
        objectName: "growthLine"
        width: parent.width
        visible: root.colony.growthLine !== ""
        text: root.colony.growthLine
    }

    QuietText {
        objectName: "methodsLine"
        width: parent.width
        visible: root.colony.methodsLine !== ""
        text: root.colony.methodsLine
    }

    SideButton {
        objectName: "somethingHappened"
        width: parent.width
        text: qsTr("Something happened")
        onClicked: root.colony.tellEvent()
    }

    PlainText {
        width: parent.width
        visible: root.colony.story.count === 0
        text: qsTr("No wash, no treatment and nothing else is written down yet.")
    }
}
