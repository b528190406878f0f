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

    CombCell {
        width: 4 * Look.pixelsPerMm
        height: width * 1.16
        full: root.full
        dusk: Look.dusk
        Accessible.ignored: true
    }

    QuietText {
        anchors.verticalCenter: parent.verticalCenter
        color: Look.ink
        text: root.text
    }
}
