// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// A list that fills the body of a page. Only the rows in sight exist, however many colonies a yard has.
Item {
    id: root

    property alias model: list.model
    property alias delegate: list.delegate
    property Component header: null
    property Component footer: null
    readonly property alias view: list
    // Not whether the hint is seen: under a sheet it is not, and what scrolls must stay where it is.
    readonly property bool overflows: list.contentHeight > root.height
    // What a page puts before the rows, where it has no other room.
    readonly property ListPlace first: (list.headerItem as ListEnd)?.first ?? null
    readonly property ListPlace last: (list.headerItem as ListEnd)?.last ?? null

    // A view of Qt 6.4 cannot make a bound inline component by itself, so it gets a place from a file, and the
    // component is made into it here.
    readonly property Component place: Qt.createComponent(Qt.resolvedUrl("ListEnd.qml"))

    function fill(end: Item, component: Component) {
        if (!end || !component)
            return;
        const place = (end as ListEnd).own;
        const item = component.createObject(place) as Item;
        item.width = Qt.binding(() => place.width);
    }

    // From Qt 6.8 on, a layout takes the rows out of sight from screen readers, and only the next layout gives them
    // back: too late for what is scrolled to.
    function tellRows() {
        const rows = list.contentItem.children; // no list to go through by "of" in Qt 6.4
        for (let i = 0; i < rows.length; ++i) {
            const button = rows[i] as PressButton;
            if (button)
                button.Accessible.ignored = false;
        }
    }

    ListView {
        id: list

        objectName: "scroll"
        width: parent.width
        height: parent.height - (root.overflows ? hint.height : 0)
        spacing: Look.gap
        boundsBehavior: Flickable.StopAtBounds
        clip: true
        focus: true
        keyNavigationEnabled: true
        highlightMoveDuration: 0
        header: root.place
        footer: root.footer ? root.place : null
        onHeaderItemChanged: root.fill(list.headerItem, root.header)
        onFooterItemChanged: root.fill(list.footerItem, root.footer)
        // Rows have different heights; without a few more of them the length would be a guess.
        cacheBuffer: 2000
    }

    // What stands before the rows grows when it is made: the top is still shown.
    Connections {
        target: list.headerItem
        function onHeightChanged() {
            list.positionViewAtBeginning();
        }
    }

    Connections {
        target: list
        function onMovementEnded() {
            root.tellRows();
        }
        function onContentYChanged() {
            if (!list.moving) // not with each picture under a finger
                root.tellRows();
        }
    }

    KeyboardFollower {
        id: follower

        flickable: list
        content: list.contentItem
    }

    Connections {
        target: root.last
        function onWanted(item: Item) {
            (list.headerItem as ListEnd).forceLayout();
            follower.show(item);
        }
    }

    WhenWanted {
        id: hint

        wanted: root.overflows
        anchors.bottom: parent.bottom
        width: parent.width

        ScrollHint {
            flickable: list
            width: parent.width
        }
    }
}
