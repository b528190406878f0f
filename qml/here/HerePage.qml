// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// Where the keeper stands: the yard, what is due in it, and the next wash.
PageFrame {
    id: page

    required property App app
    readonly property HereController here: page.app.here
    readonly property bool atYard: page.here.view === HereController.AtYard
    readonly property bool noYards: page.here.view === HereController.NoYards
    readonly property bool asking: page.here.view === HereController.Asking
    readonly property bool roomForThree: page.width >= 3 * Look.touchHeight + 2 * Look.gap + 2 * Look.margin

    objectName: "herePage"
    hasBack: false
    title: page.here.title
    subtitle: page.here.placeLine
    demo: page.here.demo
    cornerText: qsTr("Setup")
    onCornerPressed: page.app.navigator.open(Navigator.Setup)

    HereColonies {
        anchors.fill: parent
        visible: page.atYard
        here: page.here
    }

    HereChoices {
        anchors.fill: parent
        visible: !page.atYard && !page.noYards
        here: page.here
    }

    HereWelcome {
        anchors.fill: parent
        visible: page.noYards
    }

    actions: [
        SideRow {
            width: parent.width

            SideButton {
                objectName: "yards"
                visible: !page.noYards
                text: qsTr("Yards")
                onClicked: page.app.navigator.open(Navigator.Yards)
            }

            SideButton {
                objectName: "lookAgain"
                visible: page.here.view === HereController.Stranger
                text: qsTr("Look again")
                onClicked: page.here.lookAgain()
            }

            SideButton {
                objectName: "makeYardHere"
                visible: page.asking
                text: qsTr("New yard")
                onClicked: page.here.makeYardHere()
            }

            SideButton {
                objectName: "season"
                visible: page.atYard
                text: qsTr("Season")
                onClicked: page.app.navigator.open(Navigator.Season)
            }

            SideButton {
                objectName: "share"
                visible: page.roomForThree || page.noYards
                text: qsTr("Share")
                onClicked: page.app.navigator.open(Navigator.Share)
            }

            SideButton {
                objectName: "loadDemo"
                visible: page.noYards
                text: qsTr("Load the demo")
                onClicked: page.app.share.loadDemo()
            }
        },
        MainButton {
            objectName: "mainAction"
            width: parent.width
            focus: true
            visible: page.atYard && page.here.mainAction !== ""
            text: page.here.mainAction
            detail: page.here.mainDetail
            onClicked: page.here.act()
        },
        MainButton {
            objectName: "addColonies"
            width: parent.width
            visible: page.atYard && page.here.mainAction === ""
            text: qsTr("Add colonies")
            onClicked: page.app.yards.edit(page.here.yardId)
        },
        MainButton {
            objectName: "makeYard"
            width: parent.width
            visible: !page.atYard && !page.asking
            text: qsTr("Make a yard here")
            onClicked: page.here.makeYardHere()
        },
        MainButton {
            objectName: "lookAgainMain"
            width: parent.width
            visible: page.asking
            text: qsTr("Look again")
            detail: qsTr("asks for the position once more")
            onClicked: page.here.lookAgain()
        }
    ]
}
