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
    property alias actions: actionColumn.data
    property alias sheets: sheetArea.data

    signal backWanted
    signal cornerPressed

    function goBack() {
        page.cover !== "" ? page.cover = "" : page.backWanted();
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
            onBackPressed: page.goBack()
            onCornerPressed: page.cornerPressed()
        }

        Item {
            id: bodyArea

            anchors.left: parent.left
            anchors.right: parent.right
            anchors.top: header.bottom
            // What scrolls up to a button of the header keeps its distance.
            anchors.topMargin: page.hasBack && page.title !== "" ? Look.margin * 0.8 : Look.gap
            anchors.bottom: actionColumn.top
            anchors.bottomMargin: actionColumn.height > 0 ? Look.gap : 0
        }

        Column {
            id: actionColumn

            anchors.left: parent.left
            anchors.right: parent.right
            anchors.bottom: parent.bottom
            spacing: Look.gap
            LayoutMirroring.enabled: Look.leftHand
            LayoutMirroring.childrenInherit: true
        }
    }

    Item {
        id: sheetArea

        anchors.fill: parent
        visible: page.cover !== ""
    }
}
