// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup.Touch

// Every text of the app. It wraps and is never cut: what does not fit makes its place higher.
Text {
    color: Look.ink
    font.family: Look.fontFamily
    font.pixelSize: Look.bodySize
    lineHeight: 1.15
    textFormat: Text.PlainText
    wrapMode: Text.Wrap
    visible: text !== ""

    Accessible.role: Accessible.StaticText
    Accessible.name: text
}
