// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// A word that must not be missed, such as that these are not the keeper's own bees.
Rectangle {
    id: badge

    required property string text

    implicitWidth: word.implicitWidth + 16
    implicitHeight: word.implicitHeight + 4
    radius: 4
    color: Look.ink

    Accessible.role: Accessible.StaticText
    Accessible.name: badge.text

    PlainText {
        id: word

        anchors.centerIn: parent
        text: badge.text
        color: Look.page
        font.bold: true
        font.pixelSize: Look.smallSize
        wrapMode: Text.NoWrap
        Accessible.ignored: true
    }
}
