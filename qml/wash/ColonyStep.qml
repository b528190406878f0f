// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup

// Which colony is washed. The most urgent one is picked already.
WashStep {
    id: step

    readonly property ColonyRow picked: list.view.currentItem as ColonyRow
    property string pickedId

    objectName: "colonyStep"
    title: step.wash.title

    ScrollList {
        id: list

        anchors.fill: parent
        model: step.wash.colonies

        delegate: ColonyRow {
            id: row

            required property int index
            required property string colonyId
            required spoken
            required label
            required headline
            required loadLine
            required dueLine
            required standing
            required isDue

            objectName: "colony-" + row.label
            chosen: ListView.isCurrentItem
            pickable: true
            ruled: row.index < step.wash.colonies.count - 1
            onClicked: list.view.currentIndex = row.index
            onChosenChanged: if (row.chosen) step.pickedId = row.colonyId
        }
    }

    actions: MainButton {
        objectName: "mainAction"
        width: parent.width
        focus: true
        enabled: step.picked !== null
        text: step.picked ? qsTr("Colony %1").arg(step.picked.label) : qsTr("No colony to count")
        onClicked: step.wash.chooseColony(step.pickedId)
    }
}
