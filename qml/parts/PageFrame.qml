// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// A page: header, body, and the actions at the bottom, where the thumb is. Sheets lie over all of it, one at a time,
// by name: while one is there nothing under it can be touched, read or reached by a key.
PageBase {
    id: page

    property string context // small, beside Back: where this belongs
    property string title
    property string subtitle
    property bool demo: false
    property bool hasBack: true
    property string cornerText // a button in the other corner; none where empty
    property string cover // the name of the sheet that is open; none where empty
    property real sideMargin: Look.margin
    default property alias body: bodyArea.data
    property alias actions: actionStrip.actions
    property alias sheets: sheetArea.data

    // Large letters or thick gloves on a small glass: only Back, the corner's button and the main action stay in their
    // places, and all else scrolls.
    readonly property bool tight: page.height < Look.roomyHeight
    readonly property Item seenScrolling: page.tight ? page.scrollingOf(bodyArea) : null
    property Item scrolling

    signal backWanted
    signal cornerPressed

    // Nothing of a covered page is seen, but what scrolls in it must stay where it was.
    onSeenScrollingChanged: page.cover === "" || !page.tight ? page.scrolling = page.seenScrolling : undefined

    function goBack() {
        page.cover !== "" ? page.cover = "" : page.backWanted();
    }

    function placeIn(scrolling: Item, first: bool): ListPlace {
        const column = scrolling as ScrollColumn;
        const list = scrolling as ScrollList;
        return column ? (first ? column.first : column.last) : list ? (first ? list.first : list.last) : null;
    }

    // What of the body scrolls, of all that can be seen.
    function scrollingOf(item: Item): Item {
        for (let i = 0; i < item.children.length; ++i) {
            const each = item.children[i];
            if (!each.visible)
                continue;
            if (each instanceof ScrollColumn || each instanceof ScrollList)
                return each;
            const inside = page.scrollingOf(each);
            if (inside)
                return inside;
        }
        return null;
    }

    Item {
        anchors.fill: parent
        anchors.leftMargin: page.sideMargin
        anchors.rightMargin: page.sideMargin
        anchors.topMargin: Look.margin
        anchors.bottomMargin: Look.margin
        visible: page.cover === ""

        PageHeader {
            id: header

            anchors.left: parent.left
            anchors.right: parent.right
            context: page.context
            title: page.title
            subtitle: page.subtitle
            demo: page.demo
            hasBack: page.hasBack
            cornerText: page.cornerText
            tight: page.tight
            place: page.placeIn(page.scrolling, true)
            onBackPressed: page.goBack()
            onCornerPressed: page.cornerPressed()
        }

        Item {
            id: bodyArea

            anchors.left: parent.left
            anchors.right: parent.right
            anchors.top: header.bottom
            // What scrolls up to a button of the header keeps its distance.
            anchors.topMargin: page.tight && page.scrolling ? Look.gap : page.hasBack && page.title !== "" ? Look.margin * 0.8 : Look.gap
            anchors.bottom: actionStrip.top
            anchors.bottomMargin: actionStrip.height > 0 ? Look.gap : 0
        }

        ActionStrip {
            id: actionStrip

            anchors.left: parent.left
            anchors.right: parent.right
            anchors.bottom: parent.bottom
            place: page.placeIn(page.scrolling, false)
        }
    }

    Item {
        id: sheetArea

        anchors.fill: parent
        visible: page.cover !== ""
    }
}
