// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// Words of a button that become no higher than they may: their letters give way, but no word is broken or cut.
PlainText {
    required property real most // pixels of height
    required property real letters // pixels, where there is room for them
    property int weight: Font.Normal

    color: Look.actionInk
    font.pixelSize: Look.boundedSize(text, width, most, letters, weight)
    font.weight: weight
    lineHeight: 1.0
    horizontalAlignment: Text.AlignHCenter
    Accessible.ignored: true
}
