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

    // Nothing scrolls on a tight page: one line, of what the page itself does not say.
    readonly property bool oneLine: header.tight && !header.place && header.context !== ""
    readonly property real ends: Math.max(header.hasBack ? back.height : 0, header.cornerText !== "" ? corner.height : 0)

    signal backPressed
    signal cornerPressed

    implicitHeight: {
        const above = Math.max(header.ends, beside.visible ? beside.y + beside.height : 0);
        return below.parent === header && below.visible ? below.y + below.height : above;
    }
    LayoutMirroring.enabled: Look.leftHand
    LayoutMirroring.childrenInherit: true

    SideButton {
        id: back

        objectName: "back"
        anchors.left: parent.left
        visible: header.hasBack
        width: Look.touchHeight
        quiet: true
        fontSize: Look.bodySize
        text: qsTr("Back")
        onClicked: header.backPressed()
    }

    SideButton {
        id: corner

        objectName: "corner"
        anchors.right: parent.right
        visible: header.cornerText !== ""
        width: Look.touchHeight
        quiet: true
        fontSize: Look.bodySize
        text: header.cornerText
        onClicked: header.cornerPressed()
    }

    Column {
        id: beside

        anchors.left: back.visible ? back.right : parent.left
        anchors.leftMargin: back.visible ? Look.margin : 0
        anchors.right: corner.visible ? corner.left : parent.right
        anchors.rightMargin: corner.visible ? Look.margin : 0
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

        Badge {
            objectName: "demoBadge"
            visible: header.demo
            text: qsTr("Demo")
        }
    }

    Column {
        id: below

        parent: header.place ? header.place : header
        width: parent ? parent.width : 0
        y: header.place ? 0 : Math.max(header.ends, beside.visible ? beside.y + beside.height : 0) + Look.margin * 0.6
        spacing: 2
        visible: header.hasBack || header.tight

        QuietText {
            width: parent.width
            visible: header.tight && !header.oneLine && header.context !== ""
            text: header.context
        }

        Item {
            width: parent.width
            height: Math.max(line.height, lineBadge.height)
            visible: header.oneLine

            QuietText {
                id: line

                anchors.left: parent.left
                anchors.right: lineBadge.visible ? lineBadge.left : parent.right
                anchors.rightMargin: lineBadge.visible ? Look.margin : 0
                anchors.verticalCenter: parent.verticalCenter
                text: header.context
                fontSizeMode: Text.HorizontalFit
                minimumPixelSize: 12
                wrapMode: Text.NoWrap
                Accessible.name: header.title + ". " + header.context
                Accessible.role: Accessible.Heading
            }

            Badge {
                id: lineBadge

                objectName: "demoBadge"
                anchors.right: parent.right
                visible: header.demo
                text: qsTr("Demo")
            }
        }

        TitleText {
            width: parent.width
            visible: !header.oneLine && header.title !== ""
            text: header.title
        }

        QuietText {
            width: parent.width
            visible: !header.oneLine && header.subtitle !== ""
            text: header.subtitle
        }

        Badge {
            objectName: "demoBadge"
            visible: header.tight && !header.oneLine && header.demo
            text: qsTr("Demo")
        }
    }
}
