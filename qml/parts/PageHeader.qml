// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// Back and the corner's button at the two ends, words between them; the title under them where there is a Back. On a
// tight page all words stand under the two, and what scrolls takes them along.
Item {
    id: header

    property string context
    property string title
    property string subtitle
    property bool demo: false
    property bool hasBack: true
    property string cornerText
    property bool tight: false
    property Item place // of the words under the two buttons, on a tight page that scrolls

    readonly property real ends: Math.max(header.hasBack ? back.height : 0, header.cornerText !== "" ? corner.height : 0)

    signal backPressed
    signal cornerPressed

    implicitHeight: {
        const above = Math.max(header.ends, beside.visible ? beside.y + beside.height : 0);
        return below.parent === header && below.wanted ? below.y + below.height : above;
    }
    LayoutMirroring.enabled: Look.leftHand
    LayoutMirroring.childrenInherit: true

    WhenWanted {
        id: back

        anchors.left: parent.left
        wanted: header.hasBack

        SideButton {
            objectName: "back"
            width: Look.touchHeight
            quiet: true
            fontSize: Look.bodySize
            text: qsTr("Back")
            onClicked: header.backPressed()
        }
    }

    WhenWanted {
        id: corner

        anchors.right: parent.right
        wanted: header.cornerText !== ""

        SideButton {
            objectName: "corner"
            width: Look.touchHeight
            quiet: true
            fontSize: Look.bodySize
            text: header.cornerText
            onClicked: header.cornerPressed()
        }
    }

    Column {
        id: beside

        anchors.left: back.wanted ? back.right : parent.left
        anchors.leftMargin: back.wanted ? Look.margin : 0
        anchors.right: corner.wanted ? corner.left : parent.right
        anchors.rightMargin: corner.wanted ? Look.margin : 0
        y: Math.max(0, (Look.touchHeight - height) / 2)
        visible: !header.tight
        spacing: 4

        TitleText {
            width: parent.width
            visible: !header.hasBack && header.title !== ""
            text: header.title
        }

        QuietText {
            width: parent.width
            text: header.hasBack ? header.context : header.subtitle
        }

        WhenWanted {
            wanted: header.demo

            DemoBadge {}
        }
    }

    WhenWanted {
        id: below

        parent: header.place ? header.place : header
        width: parent ? parent.width : 0
        y: header.place ? 0 : Math.max(header.ends, beside.visible ? beside.y + beside.height : 0) + Look.margin * 0.6
        wanted: header.hasBack || header.tight

        PageWords {
            width: parent.width
            context: header.context
            title: header.title
            subtitle: header.subtitle
            demo: header.demo
            tight: header.tight
            oneLine: header.tight && !header.place && header.context !== ""
        }
    }
}
