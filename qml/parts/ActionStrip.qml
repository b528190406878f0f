// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// The actions of a page, one under the other, the main one at the bottom, and over them what went wrong. Where a page has
// no room for all of it, only the main action stays under the thumb, and the rest moves into what scrolls.
Item {
    id: strip

    property ListPlace place // where the others go; null where they stay
    default property alias actions: arriving.data

    implicitHeight: main.y + main.height

    Item {
        id: arriving

        width: parent.width
    }

    Item {
        id: home

        width: parent.width
    }

    Column {
        id: others

        parent: strip.place ? strip.place : home
        width: parent ? parent.width : 0
        spacing: Look.gap
        LayoutMirroring.enabled: Look.leftHand
        LayoutMirroring.childrenInherit: true
    }

    Column {
        id: main

        y: !strip.place && others.height > 0 ? others.height + (main.height > 0 ? Look.gap : 0) : 0
        width: parent.width
        spacing: Look.gap
        LayoutMirroring.enabled: Look.leftHand
        LayoutMirroring.childrenInherit: true
    }

    // Words that have come since must be seen, wherever they stand.
    function show(words: Item) {
        if (!strip.place || !words.visible)
            return;
        others.forceLayout();
        strip.place.wanted(words);
    }

    function givesWay(item: Item): bool {
        return item instanceof SideButton || item instanceof Text || item instanceof ProblemText || item instanceof ResultText || ((item as SideRow)?.givesWay ?? false);
    }

    Component.onCompleted: {
        for (const each of Array.from(arriving.children)) {
            each.parent = strip.givesWay(each) ? others : main;
            if (each instanceof Text || each instanceof ProblemText || each instanceof ResultText)
                each.heightChanged.connect(() => strip.show(each));
        }
    }
}
