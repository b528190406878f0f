// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// The standing: its mark, and its words.
Item {
    id: root

    required property int standing
    required property string text

    implicitHeight: Math.max(mark.height, words.implicitHeight)

    StandingMark {
        id: mark

        objectName: "mark"
        anchors.verticalCenter: parent.verticalCenter
        width: 8 * Look.pixelsPerMm
        height: width
        standing: root.standing
        dusk: Look.dusk
    }

    TitleText {
        id: words

        objectName: "headline"
        anchors.verticalCenter: parent.verticalCenter
        anchors.left: mark.right
        anchors.leftMargin: Look.margin * 0.8
        anchors.right: parent.right
        text: root.text
    }
}
