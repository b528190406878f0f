// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup.Touch

PlainText {
    font.bold: true
    font.pixelSize: Look.wordSize(text, width, Look.titleSize, Font.Bold)
    lineHeight: 1.0

    Accessible.role: Accessible.Heading
}
