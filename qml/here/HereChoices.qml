// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// The yards to pick from where the position alone cannot tell.
HereFrame {
    id: page

    readonly property bool asking: page.here.view === HereController.Asking

    ScrollColumn {
        anchors.fill: parent

        HeadText {
            width: parent.width
            visible: page.here.yardChoices.count > 0
            text: qsTr("Or pick one of your yards")
        }

        ChoiceList {
            width: parent.width
            pickable: false
            rowName: "yard"
            model: page.here.yardChoices
            onPicked: key => page.here.pickYard(key)
        }
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
                objectName: "share"
                visible: page.roomForThree
                text: qsTr("Share")
                onClicked: page.app.navigator.open(Navigator.Share)
            }
        },
        MainButton {
            objectName: "makeYard"
            width: parent.width
            visible: !page.asking
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
