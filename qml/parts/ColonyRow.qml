// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// A colony: its plate, what is known and due, and the mark of its standing.
RowButton {
    id: row

    property string label
    property string headline
    property string loadLine
    property string dueLine
    property int standing: StandingWord.Unknown
    property bool isDue: false
    property bool pickable: false // one of several to pick from, else a thing to open
    property bool chosen: false

    Accessible.role: row.pickable ? Accessible.RadioButton : Accessible.Button
    Accessible.checkable: row.pickable
    Accessible.checked: row.chosen
    framed: row.chosen
    padding: row.pickable ? 10 : 4

    contentItem: Item {
        implicitHeight: Math.max(plate.implicitHeight, words.implicitHeight)

        ColonyPlate {
            id: plate

            anchors.verticalCenter: parent.verticalCenter
            label: row.label
            filled: row.isDue
        }

        Column {
            id: words

            anchors.verticalCenter: parent.verticalCenter
            anchors.left: plate.right
            anchors.leftMargin: Look.margin * 0.8
            anchors.right: mark.left
            anchors.rightMargin: Look.margin * 0.5
            spacing: 1

            PlainText {
                width: parent.width
                text: row.headline
                font.bold: true
                lineHeight: 1.05
                Accessible.ignored: true
            }

            QuietText {
                width: parent.width
                text: row.loadLine
                Accessible.ignored: true
            }

            QuietText {
                width: parent.width
                text: row.dueLine
                color: row.isDue ? Look.ink : Look.quietInk
                Accessible.ignored: true
            }
        }

        StandingMark {
            id: mark

            anchors.verticalCenter: parent.verticalCenter
            anchors.right: parent.right
            width: 6 * Look.pixelsPerMm
            height: width
            standing: row.standing
            inkColor: Look.ink
            closeColor: Look.honey
            overColor: Look.rust
        }
    }
}
