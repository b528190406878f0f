// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// How many colonies to wash, and which.
ScrollColumn {
    id: root

    required property RoundController round

    spacing: Look.margin

    PlainText {
        objectName: "planLine"
        width: parent.width
        text: root.round.planLine
    }

    ChoiceList {
        width: parent.width
        visible: root.round.ways.count > 0
        rowName: "way"
        model: root.round.ways
        onPicked: key => root.round.pickWay(key)
    }

    HeadText {
        width: parent.width
        visible: root.round.numbers.count > 0
        text: qsTr("How many?")
    }

    ChoiceList {
        width: parent.width
        visible: root.round.numbers.count > 0
        rowName: "number"
        model: root.round.numbers
        onPicked: key => root.round.pickNumber(key)
    }

    CautionText {
        objectName: "handLine"
        width: parent.width
        visible: root.round.handLine !== ""
        text: root.round.handLine
    }

    Column {
        width: parent.width
        visible: hands.count > 0
        spacing: Look.gap

        Repeater {
            id: hands

            model: root.round.byHand

            CheckRow {
                id: hand

                required property int index
                required property string key
                required title
                required chosen

                objectName: "hand-" + hand.index
                width: parent ? parent.width : 0
                ruled: hand.index < hands.count - 1
                onClicked: root.round.toggle(hand.key)
            }
        }
    }

    HeadText {
        width: parent.width
        visible: root.round.earlier.count > 0
        text: qsTr("Earlier rounds")
    }

    ChoiceList {
        width: parent.width
        visible: root.round.earlier.count > 0
        pickable: false
        rowName: "round"
        model: root.round.earlier
        onPicked: key => root.round.openEarlier(key)
    }
}
