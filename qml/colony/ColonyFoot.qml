// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// Under the story of a colony.
Column {
    id: root

    required property ColonyController colony

    signal nameWanted

    width: ListView.view ? ListView.view.width : implicitWidth
    topPadding: root.colony.story.count > 0 ? Look.gap : 0
    spacing: Look.gap

    SideButton {
        objectName: "changeName"
        width: parent.width
        text: qsTr("Change its number or name")
        onClicked: root.nameWanted()
    }

    SideButton {
        objectName: "colonyHistory"
        width: parent.width
        quiet: true
        text: qsTr("What changed")
        onClicked: root.colony.openHistory()
    }
}
