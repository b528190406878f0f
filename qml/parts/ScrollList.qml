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
    property alias header: list.header
    property alias footer: list.footer
    readonly property alias view: list

    ListView {
        id: list

        objectName: "scroll"
        width: parent.width
        height: parent.height - (hint.visible ? hint.height : 0)
        spacing: Look.gap
        boundsBehavior: Flickable.StopAtBounds
        clip: true
        focus: true
        keyNavigationEnabled: true
        highlightMoveDuration: 0
        // Rows have different heights; without a few more of them the length would be a guess.
        cacheBuffer: 2000
    }

    ScrollHint {
        id: hint

        flickable: list
        visible: list.contentHeight > root.height
        anchors.bottom: parent.bottom
        width: parent.width
    }
}
