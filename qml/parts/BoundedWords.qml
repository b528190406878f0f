// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// Words of a button that become no higher than they may: their letters give way, but no word is broken or cut.
Item {
    id: root

    required property string text
    required property real most // pixels of height
    required property real letters // pixels, where there is room for them
    property int weight: Font.Normal

    visible: root.text !== ""
    implicitHeight: Math.min(asWanted.implicitHeight, root.most)

    PlainText {
        id: asWanted

        width: parent.width
        visible: false
        text: root.text
        font.pixelSize: Look.wordSize(text, width, root.letters, root.weight)
        font.weight: root.weight
        lineHeight: 1.0
        Accessible.ignored: true
    }

    PlainText {
        anchors.fill: parent
        text: root.text
        color: Look.actionInk
        font.pixelSize: asWanted.font.pixelSize
        font.weight: root.weight
        fontSizeMode: root.height < asWanted.implicitHeight ? Text.Fit : Text.FixedSize
        minimumPixelSize: 12
        lineHeight: 1.0
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
        Accessible.ignored: true
    }
}
