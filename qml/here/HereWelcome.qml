// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// The first start: nothing is kept yet.
HereFrame {
    id: page

    ScrollColumn {
        anchors.fill: parent
        centred: true

        PlainText {
            width: parent.width
            text: qsTr("Wash half a cup of bees, count the mites, and know what the count means.")
            font.pixelSize: Look.buttonSize
        }

        PlainText {
            width: parent.width
            text: qsTr("Begin with a yard: a name, and the colonies that stand in it. Halfcup knows it again by its place.")
        }

        QuietText {
            width: parent.width
            text: qsTr("The demo brings two invented yards over one season. They are marked as demo wherever they appear.")
        }
    }

    actions: [
        SideRow {
            width: parent.width

            SideButton {
                objectName: "share"
                text: qsTr("Share")
                onClicked: page.app.navigator.open(Navigator.Share)
            }

            SideButton {
                objectName: "loadDemo"
                text: qsTr("Load the demo")
                onClicked: page.app.share.loadDemo()
            }
        },
        MainButton {
            objectName: "makeYard"
            width: parent.width
            text: qsTr("Make a yard here")
            onClicked: page.here.makeYardHere()
        }
    ]
}
