// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// What a choice's row shows.
Item {
    id: root

    required property string title
    required property string detail
    required property string note
    required property bool pickable
    required property bool chosen
    required property bool showsStanding
    required property int standing

    implicitHeight: words.implicitHeight

    Rectangle {
        id: ring

        anchors.verticalCenter: parent.verticalCenter
        visible: root.pickable
        width: 4.4 * Look.pixelsPerMm
        height: width
        radius: width / 2
        color: Look.page
        border.width: Look.hairline
        border.color: Look.ink

        Rectangle {
            anchors.centerIn: parent
            visible: root.chosen
            width: parent.width * 0.56
            height: width
            radius: width / 2
            color: Look.ink
        }
    }

    Column {
        id: words

        anchors.verticalCenter: parent.verticalCenter
        anchors.left: root.pickable ? ring.right : parent.left
        anchors.leftMargin: root.pickable ? Look.margin * 0.8 : 0
        anchors.right: mark.visible ? mark.left : parent.right
        anchors.rightMargin: mark.visible ? Look.margin * 0.5 : 0
        spacing: 1

        PlainText {
            width: parent.width
            text: root.title
            font.weight: root.pickable && !root.chosen ? Font.Medium : Font.Bold
            lineHeight: 1.05
            Accessible.ignored: true
        }

        QuietText {
            width: parent.width
            text: root.detail
            Accessible.ignored: true
        }

        QuietText {
            width: parent.width
            text: root.note
            Accessible.ignored: true
        }
    }

    StandingMark {
        id: mark

        anchors.verticalCenter: parent.verticalCenter
        anchors.right: parent.right
        visible: root.showsStanding
        width: 6 * Look.pixelsPerMm
        height: width
        standing: root.standing
        dusk: Look.dusk
    }
}
