// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup.Touch

// Over a group of rows or fields.
PlainText {
    font.bold: true
    font.pixelSize: Look.wordSize(text, width, Look.bodySize, Font.Bold)
    topPadding: Look.gap / 2

    Accessible.role: Accessible.Heading
}
