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

    WhenWanted {
        id: ring

        anchors.verticalCenter: parent.verticalCenter
        wanted: root.pickable

        ChoiceDot {
            chosen: root.chosen
        }
    }

    Column {
        id: words

        anchors.verticalCenter: parent.verticalCenter
        anchors.left: ring.wanted ? ring.right : parent.left
        anchors.leftMargin: ring.wanted ? Look.margin * 0.8 : 0
        anchors.right: mark.wanted ? mark.left : parent.right
        anchors.rightMargin: mark.wanted ? Look.margin * 0.5 : 0
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

    WhenWanted {
        id: mark

        anchors.verticalCenter: parent.verticalCenter
        anchors.right: parent.right
        wanted: root.showsStanding

        StandingMark {
            implicitWidth: 6 * Look.pixelsPerMm
            implicitHeight: implicitWidth
            standing: root.standing
            dusk: Look.dusk
        }
    }
}
