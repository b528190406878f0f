// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// The one line over a tight page of which nothing scrolls.
Item {
    id: root

    required property string context
    required property string title // is read aloud only: the page itself says it
    required property bool demo

    implicitHeight: Math.max(line.height, badge.height)

    QuietText {
        id: line

        anchors.left: parent.left
        anchors.right: badge.wanted ? badge.left : parent.right
        anchors.rightMargin: badge.wanted ? Look.margin : 0
        anchors.verticalCenter: parent.verticalCenter
        text: root.context
        // All of it on the line, down to a size that can still be read; then on two.
        font.pixelSize: Look.wordSize(text.replace(/ /g, "_"), width, Look.smallSize, Font.Normal)
        lineHeight: 1.0
        Accessible.name: root.title + ". " + root.context
        Accessible.role: Accessible.Heading
    }

    WhenWanted {
        id: badge

        anchors.right: parent.right
        wanted: root.demo

        DemoBadge {}
    }
}
