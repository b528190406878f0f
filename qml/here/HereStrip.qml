// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// Over the colonies of a yard: what is under way.
Column {
    id: root

    required property HereController here

    width: ListView.view ? ListView.view.width : implicitWidth
    spacing: Look.gap

    ChoiceRow {
        objectName: "tray"
        width: parent.width
        visible: root.here.trayLine !== ""
        title: root.here.trayLine
        detail: qsTr("Open the tray")
        onClicked: root.here.openTray()
    }
}
