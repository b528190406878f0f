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

    Column {
        width: parent.width
        spacing: Look.gap

        SideRow {
            width: parent.width

            SideButton {
                objectName: "somethingHappened"
                text: qsTr("Something happened")
                onClicked: root.colony.tellEvent()
            }

            SideButton {
                objectName: "treat"
                visible: root.colony.alive
                text: qsTr("Treat")
                onClicked: root.colony.treat()
            }
        }

        SideButton {
            objectName: "countAnotherWay"
            width: parent.width
            visible: root.colony.alive
            text: qsTr("Count another way")
            onClicked: root.colony.pickMethod()
        }
    }

    ColonyLoads {
        width: parent.width
        visible: root.colony.loads.hasWash
        loads: root.colony.loads
    }

    PlainText {
        width: parent.width
        visible: root.colony.story.count === 0
        text: qsTr("No wash, no treatment and nothing else is written down yet.")
    }
}
