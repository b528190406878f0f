// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup.Touch

// Before or after the rows of a list: what a page without room moves there, and what the list has of its own.
Column {
    id: end

    readonly property ListPlace first: firstPlace
    readonly property ListPlace last: lastPlace
    readonly property ListPlace own: ownPlace

    width: ListView.view ? ListView.view.width : 0
    spacing: Look.gap
    bottomPadding: (firstPlace.visible || lastPlace.visible) && ownPlace.height === 0 ? Look.gap : 0

    ListPlace {
        id: firstPlace

        width: parent.width
    }

    ListPlace {
        id: lastPlace

        width: parent.width
    }

    ListPlace {
        id: ownPlace

        width: parent.width
    }
}
