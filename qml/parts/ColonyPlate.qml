// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// The number plate of a hive. Filled: something is due.
Rectangle {
    id: plate

    required property string label
    property bool filled: false

    implicitWidth: 9.5 * Look.pixelsPerMm
    implicitHeight: Math.max(8 * Look.pixelsPerMm, word.implicitHeight + 8)
    radius: 6
    color: plate.filled ? Look.action : Look.page
    border.width: Look.hairline
    border.color: plate.filled ? Look.action : Look.ink
    Accessible.ignored: true

    PlainText {
        id: word

        anchors.centerIn: parent
        width: parent.width - 8
        text: plate.label
        color: plate.filled ? Look.actionInk : Look.ink
        font.bold: true
        font.pixelSize: Look.wordSize(text, width, plate.label.length < 4 ? Look.buttonSize : Look.smallSize, Font.Bold)
        lineHeight: 1.0
        wrapMode: Text.Wrap
        horizontalAlignment: Text.AlignHCenter
        Accessible.ignored: true
    }
}
