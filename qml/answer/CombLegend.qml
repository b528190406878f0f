// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// One cell of the comb and its meaning.
Row {
    id: root

    required property bool full
    required property string text

    spacing: 6

    // The first cell of a comb whose other cells are not drawn.
    Item {
        width: 4 * Look.pixelsPerMm
        height: width * 1.16

        CombItem {
            width: parent.width * 10.5
            height: width / aspect
            atLeast: root.full ? 1 : 0
            perhaps: root.full ? 0 : 1
            fillColor: Look.honey
            wallColor: Look.ink
            emptyColor: "transparent"
            Accessible.ignored: true
        }
    }

    QuietText {
        anchors.verticalCenter: parent.verticalCenter
        color: Look.ink
        text: root.text
    }
}
