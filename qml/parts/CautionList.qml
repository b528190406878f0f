// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// Sentences that must not be missed, one under the other.
Column {
    id: root

    property alias sentences: rows.model

    spacing: Look.margin * 0.6
    visible: rows.count > 0

    Repeater {
        id: rows

        CautionText {
            required property string modelData

            width: root.width
            text: modelData
        }
    }
}
