// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup.Touch

// A number as large as its place allows. Text.Fit would try size after size at each new figure, and lets them differ.
PlainText {
    property real largest: height

    font.bold: true
    font.pixelSize: Look.figureSize(text, width, height, largest)
    lineHeight: 1.0
    wrapMode: Text.NoWrap
    verticalAlignment: Text.AlignVCenter
}
