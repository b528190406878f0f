// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// The body of a page: what stands one under the other, and moves under the finger where it is more than fits.
Item {
    id: root

    property alias spacing: column.spacing
    property bool centred: false // in the middle of the height where it fits
    default property alias content: column.data
    // What a page puts before and after the rest, where it has no other room.
    // Not whether the hint is seen: under a sheet it is not, and what scrolls must stay where it is.
    readonly property bool overflows: all.height > root.height
    readonly property ListPlace first: firstPlace
    readonly property ListPlace last: lastPlace

    KeyboardFollower {
        id: follower

        flickable: flick
        content: all
    }

    Flickable {
        id: flick

        objectName: "scroll"
        width: parent.width
        height: parent.height - (root.overflows ? hint.height : 0)
        contentWidth: width
        contentHeight: Math.max(all.height, root.centred ? root.height - (root.overflows ? hint.height : 0) : 0)
        boundsBehavior: Flickable.StopAtBounds
        clip: true

        Column {
            id: all

            width: flick.width
            y: root.centred ? Math.max(0, (flick.height - height) / 2) : 0
            spacing: Look.gap

            ListPlace {
                id: firstPlace

                width: parent.width
            }

            Column {
                id: column

                width: parent.width
                spacing: Look.margin * 0.6
            }

            ListPlace {
                id: lastPlace

                width: parent.width
                // It has come just now, and has no place yet.
                onWanted: item => {
                    all.forceLayout();
                    follower.show(item);
                }
            }
        }
    }

    WhenWanted {
        id: hint

        wanted: root.overflows
        anchors.bottom: parent.bottom
        width: parent.width

        ScrollHint {
            flickable: flick
            width: parent.width
        }
    }
}
