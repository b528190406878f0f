// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// One of several to pick from, or a thing to open. What is picked has a filled dot and says so when read aloud.
RowButton {
    id: row

    property string title
    property string note
    property bool pickable: false
    property bool chosen: false
    property int standing: StandingWord.Unknown
    property bool showsStanding: false // its mark at the end

    text: row.title
    spoken: row.title + (row.detail ? ". " + row.detail : "") + (row.note ? ". " + row.note : "")
    Accessible.role: row.pickable ? Accessible.RadioButton : Accessible.Button
    Accessible.checkable: row.pickable
    Accessible.checked: row.chosen

    contentItem: Item {
        implicitHeight: words.implicitHeight

        Rectangle {
            id: ring

            anchors.verticalCenter: parent.verticalCenter
            visible: row.pickable
            width: 4.4 * Look.pixelsPerMm
            height: width
            radius: width / 2
            color: Look.page
            border.width: Look.hairline
            border.color: Look.ink

            Rectangle {
                anchors.centerIn: parent
                visible: row.chosen
                width: parent.width * 0.56
                height: width
                radius: width / 2
                color: Look.ink
            }
        }

        Column {
            id: words

            anchors.verticalCenter: parent.verticalCenter
            anchors.left: row.pickable ? ring.right : parent.left
            anchors.leftMargin: row.pickable ? Look.margin * 0.8 : 0
            anchors.right: mark.visible ? mark.left : parent.right
            anchors.rightMargin: mark.visible ? Look.margin * 0.5 : 0
            spacing: 1

            PlainText {
                width: parent.width
                text: row.title
                font.weight: row.pickable && !row.chosen ? Font.Medium : Font.Bold
                lineHeight: 1.05
                Accessible.ignored: true
            }

            QuietText {
                width: parent.width
                text: row.detail
                Accessible.ignored: true
            }

            QuietText {
                width: parent.width
                text: row.note
                Accessible.ignored: true
            }
        }

        StandingMark {
            id: mark

            anchors.verticalCenter: parent.verticalCenter
            anchors.right: parent.right
            visible: row.showsStanding
            width: 6 * Look.pixelsPerMm
            height: width
            standing: row.standing
            inkColor: Look.ink
            closeColor: Look.honey
            overColor: Look.rust
        }
    }
}
