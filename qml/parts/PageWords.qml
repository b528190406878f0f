// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup

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

    WhenWanted {
        width: parent.width
        wanted: words.tight && !words.oneLine && words.context !== ""

        QuietText {
            width: parent.width
            text: words.context
        }
    }

    WhenWanted {
        width: parent.width
        wanted: words.oneLine

        PageLine {
            width: parent.width
            context: words.context
            title: words.title
            demo: words.demo
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

    WhenWanted {
        wanted: words.tight && !words.oneLine && words.demo

        DemoBadge {}
    }
}
