// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// Three keys beside each other that fill the height, where the glass is wide enough for them; else two, the digits
// scrolling over Delete and Keep, which stay.
Item {
    id: keys

    readonly property bool wide: keys.width >= 3 * Look.touchHeight + 2 * Look.gap - 1
    readonly property int columns: keys.wide ? 3 : 2
    readonly property real keyWidth: (keys.width - (keys.columns - 1) * Look.gap) / keys.columns
    readonly property real keyHeight: keys.wide ? (keys.height - 3 * Look.gap) / 4 : Look.touchHeight

    signal digit(string digit)
    signal deleted
    signal done

    ScrollColumn {
        id: digits

        width: parent.width
        // Half a pixel more than the rows: rounding must not make them scroll.
        height: keys.wide ? 3 * keys.keyHeight + 2 * Look.gap + 0.5 : parent.height - keys.keyHeight - Look.gap

        Grid {
            columns: keys.columns
            spacing: Look.gap

            Repeater {
                model: keys.wide ? 9 : 10

                SideButton {
                    required property int index
                    readonly property string figure: String((index + 1) % 10)

                    objectName: "key" + figure
                    width: keys.keyWidth
                    height: keys.keyHeight
                    fontSize: Math.min(Look.titleSize, keys.keyHeight * 0.6)
                    text: figure
                    onClicked: keys.digit(figure)
                }
            }
        }
    }

    Row {
        anchors.bottom: parent.bottom
        spacing: Look.gap

        SideButton {
            objectName: "keyDelete"
            width: keys.keyWidth
            height: keys.keyHeight
            text: qsTr("Delete")
            onClicked: keys.deleted()
        }

        SideButton {
            objectName: "key0"
            visible: keys.wide
            width: keys.keyWidth
            height: keys.keyHeight
            fontSize: Math.min(Look.titleSize, keys.keyHeight * 0.6)
            text: "0"
            onClicked: keys.digit("0")
        }

        MainButton {
            objectName: "keyKeep"
            width: keys.keyWidth
            height: keys.keyHeight
            fontSize: Look.mainSize
            text: qsTr("Keep")
            onClicked: keys.done()
        }
    }
}
