// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// Back and the corner's button at the two ends, words between them; the title under them where there is a Back.
Item {
    id: header

    property string context
    property string title
    property string subtitle
    property bool demo: false
    property bool hasBack: true
    property string cornerText

    signal backPressed
    signal cornerPressed

    implicitHeight: header.hasBack ? below.y + below.height : below.y
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

        anchors.left: parent.left
        anchors.right: parent.right
        y: Math.max(header.hasBack || header.cornerText !== "" ? Look.touchHeight : 0, beside.y + beside.height) + (children.length > 0 && header.hasBack ? Look.margin * 0.6 : 0)
        spacing: 2
        visible: header.hasBack

        TitleText {
            width: parent.width
            text: header.title
        }

        QuietText {
            width: parent.width
            text: header.subtitle
        }
    }
}
