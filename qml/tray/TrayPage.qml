// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// Jars scooped and not yet counted, in the order of their scoops.
PageFrame {
    id: page

    required property App app
    readonly property TrayController tray: page.app.tray

    objectName: "trayPage"
    title: page.tray.title
    demo: page.tray.demo
    onBackWanted: page.app.navigator.back()

    ScrollList {
        anchors.fill: parent
        visible: page.tray.jars.count > 0
        model: page.tray.jars

        delegate: ColonyRow {
            id: row

            required property int index
            required property string colonyId
            required spoken
            required label
            required headline
            required loadLine
            required dueLine

            objectName: "jar-" + row.label
            showsStanding: false
            ruled: row.index < page.tray.jars.count - 1
            onClicked: page.tray.open(row.colonyId)
        }
    }

    ScrollColumn {
        anchors.fill: parent
        visible: page.tray.jars.count === 0

        PlainText {
            width: parent.width
            text: qsTr("A jar comes here when you scoop now and wash later: after the scoop, touch Wash it later.")
        }
    }

    actions: [
        SideButton {
            objectName: "washJar"
            width: parent.width
            visible: page.tray.washAction !== ""
            text: page.tray.washAction
            onClicked: page.tray.washNext()
        },
        MainButton {
            objectName: "mainAction"
            width: parent.width
            focus: true
            text: page.tray.mainAction
            onClicked: page.tray.act()
        }
    ]
}
