// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// In a yard: its colonies, and the next wash.
HereFrame {
    id: page

    readonly property bool hasNext: page.here.mainAction !== ""

    HereColonies {
        anchors.fill: parent
        here: page.here
    }

    actions: [
        SideRow {
            width: parent.width

            SideButton {
                objectName: "yards"
                text: qsTr("Yards")
                onClicked: page.app.navigator.open(Navigator.Yards)
            }

            SideButton {
                objectName: "season"
                text: qsTr("Season")
                onClicked: page.app.navigator.open(Navigator.Season)
            }

            SideButton {
                objectName: "share"
                visible: page.roomForThree
                text: qsTr("Share")
                onClicked: page.app.navigator.open(Navigator.Share)
            }
        },
        WhenWanted {
            width: parent.width
            wanted: page.hasNext

            MainButton {
                objectName: "mainAction"
                width: parent.width
                focus: true
                text: page.here.mainAction
                detail: page.here.mainDetail
                onClicked: page.here.act()
            }
        },
        WhenWanted {
            width: parent.width
            wanted: !page.hasNext

            MainButton {
                objectName: "addColonies"
                width: parent.width
                text: qsTr("Add colonies")
                onClicked: page.app.yards.edit(page.here.yardId)
            }
        }
    ]
}
