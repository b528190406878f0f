// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// All yards. A touch goes there; the button beside it changes it.
PageFrame {
    id: page

    required property App app
    readonly property YardsController yards: page.app.yards

    objectName: "yardsPage"
    demo: page.app.here.demo
    title: qsTr("Yards")
    onBackWanted: page.app.navigator.back()

    ScrollList {
        anchors.fill: parent
        model: page.yards.yards

        delegate: YardRow {
            id: row

            required property int index

            width: ListView.view.width
            ruled: row.index < page.yards.yards.count - 1
            onPicked: {
                page.app.here.pickYard(row.key);
                page.app.navigator.home();
            }
            onEdited: page.yards.edit(row.key)
        }
    }

    actions: MainButton {
        objectName: "mainAction"
        width: parent.width
        focus: true
        text: qsTr("Make a yard here")
        onClicked: page.yards.makeNew()
    }
}
