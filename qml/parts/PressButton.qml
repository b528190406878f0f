// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup.Touch

// What all that is pressed has in common: a finger, a key and a screen reader press it alike, and the one that has the
// keyboard shows it.
PressArea {
    id: control

    property string text
    property string detail
    property string spoken: control.text // for a screen reader
    property real ringMargin: -5 // outside of the button, so that nothing in it moves

    Accessible.role: Accessible.Button
    Accessible.name: control.spoken
    Accessible.description: control.detail
    Accessible.onPressAction: control.press()

    Rectangle {
        anchors.fill: parent
        anchors.margins: control.ringMargin
        z: 1
        radius: Look.corner - control.ringMargin
        color: "transparent"
        border.width: 3
        border.color: Look.action
        visible: control.visualFocus
    }
}
