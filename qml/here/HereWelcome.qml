// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import Halfcup
import Halfcup.Touch

// The first start: nothing is kept yet.
ScrollColumn {
    centred: true

    PlainText {
        width: parent.width
        text: qsTr("Wash half a cup of bees, count the mites, and know what the count means.")
        font.pixelSize: Look.buttonSize
    }

    PlainText {
        width: parent.width
        text: qsTr("Begin with a yard: a name, and the colonies that stand in it. Halfcup knows it again by its place.")
    }

    QuietText {
        width: parent.width
        text: qsTr("The demo brings two invented yards over one season. They are marked as demo wherever they appear.")
    }
}
