// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// The title of a page with what belongs to it; on a tight page also what stands beside the buttons on others.
Column {
    id: words

    required property string context
    required property string title
    required property string subtitle
    required property bool demo
    required property bool tight
    required property bool oneLine // nothing scrolls on a tight page: one line, of what the page itself does not say

    spacing: 2

    QuietText {
        width: parent.width
        visible: words.tight && !words.oneLine && words.context !== ""
        text: words.context
    }

    Item {
        width: parent.width
        height: Math.max(line.height, lineBadge.height)
        visible: words.oneLine

        QuietText {
            id: line

            anchors.left: parent.left
            anchors.right: lineBadge.visible ? lineBadge.left : parent.right
            anchors.rightMargin: lineBadge.visible ? Look.margin : 0
            anchors.verticalCenter: parent.verticalCenter
            text: words.context
            // All of it on the line, down to a size that can still be read; then on two.
            font.pixelSize: Look.wordSize(text.replace(/ /g, "_"), width, Look.smallSize, Font.Normal)
            lineHeight: 1.0
            Accessible.name: words.title + ". " + words.context
            Accessible.role: Accessible.Heading
        }

        DemoBadge {
            id: lineBadge

            anchors.right: parent.right
            visible: words.demo
        }
    }

    TitleText {
        width: parent.width
        visible: !words.oneLine && words.title !== ""
        text: words.title
    }

    QuietText {
        width: parent.width
        visible: !words.oneLine && words.subtitle !== ""
        text: words.subtitle
    }

    DemoBadge {
        visible: words.tight && !words.oneLine && words.demo
    }
}
