// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// Under the story of a colony.
Item {
    id: root

    required property ColonyController colony

    signal nameWanted

    width: ListView.view ? ListView.view.width : implicitWidth
    implicitHeight: change.height + change.y

    SideButton {
        id: change

        objectName: "changeName"
        y: root.colony.story.count > 0 ? Look.gap : 0
        width: parent.width
        text: qsTr("Change its number or name")
        onClicked: root.nameWanted()
    }
}
