// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Controls.Basic

// The empty window with as much on it as Halfcup's first page shows: what Qt alone takes for words and buttons.
EmptyWindow {
    Column {
        Repeater {
            model: 24

            Text {
                required property int index

                width: 340
                text: "Colony " + index + ", washed on 12 June"
                font.family: "Inter"
                font.pixelSize: [16, 18, 20, 28][index % 4]
                font.weight: [Font.Normal, Font.Medium, Font.Bold][index % 3]
                wrapMode: Text.Wrap
            }
        }

        Repeater {
            model: 12

            Button {
                required property int index

                text: "Wash " + index
            }
        }
    }
}
