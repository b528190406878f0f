// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// What to do in a step, in sentences that are read at arm's length.
Column {
    id: root

    property alias lines: rows.model

    spacing: Look.margin

    Repeater {
        id: rows

        PlainText {
            required property string modelData

            width: root.width
            text: modelData
            font.pixelSize: Look.buttonSize
        }
    }
}
