// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// A round under way: what is washed, and what is left.
ScrollColumn {
    id: root

    required property RoundController round
    readonly property bool clear: root.round.clearLine !== "" && root.round.left.count > 0

    signal endWanted

    spacing: Look.gap

    PlainText {
        objectName: "clearLine"
        width: parent.width
        visible: root.round.clearLine !== ""
        text: root.round.clearLine
        font.bold: true
    }

    SideButton {
        objectName: root.clear ? "endRound" : ""
        width: parent.width
        visible: root.clear
        text: qsTr("End the round")
        onClicked: root.endWanted()
    }

    HeadText {
        width: parent.width
        visible: root.round.left.count > 0
        text: qsTr("Still to wash, in this order")
    }

    ChoiceList {
        width: parent.width
        visible: root.round.left.count > 0
        pickable: false
        rowName: "left"
        model: root.round.left
        onPicked: key => root.round.openColony(key)
    }

    SideRow {
        width: parent.width
        visible: root.round.left.count > 0

        SideButton {
            objectName: "skip"
            visible: root.round.skipAction !== ""
            text: root.round.skipAction
            onClicked: root.round.skip()
        }

        SideButton {
            objectName: root.clear ? "" : "endRound"
            visible: !root.clear
            text: qsTr("End the round")
            onClicked: root.endWanted()
        }
    }

    RoundWashed {
        width: parent.width
        round: root.round
    }
}
