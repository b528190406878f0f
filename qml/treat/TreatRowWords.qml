// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// What the row of a choice, or of a reason, shows.
Item {
    id: root

    required property string title
    required property string detail
    required property int verdict // a VerdictMark.Value
    property bool bold: true

    implicitHeight: Math.max(words.implicitHeight, mark.height)

    VerdictMark {
        id: mark

        anchors.verticalCenter: parent.verticalCenter
        width: 6 * Look.pixelsPerMm
        height: width
        verdict: root.verdict
        inkColor: Look.ink
        careColor: Look.honey
        barColor: Look.rust
    }

    Column {
        id: words

        anchors.verticalCenter: parent.verticalCenter
        anchors.left: mark.right
        anchors.leftMargin: Look.margin * 0.8
        anchors.right: parent.right
        spacing: 1

        PlainText {
            width: parent.width
            text: root.title
            font.bold: root.bold
            lineHeight: 1.05
            Accessible.ignored: true
        }

        QuietText {
            width: parent.width
            text: root.detail
            Accessible.ignored: true
        }
    }
}
