// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// What a round says of the yard.
ScrollColumn {
    id: root

    required property RoundController round

    spacing: Look.margin

    Headline {
        width: parent.width
        standing: root.round.standing
        text: root.round.headline
    }

    PlainText {
        objectName: "sentence"
        width: parent.width
        text: root.round.sentence
        font.pixelSize: Look.buttonSize
    }

    PlainText {
        objectName: "chanceLine"
        width: parent.width
        visible: text !== ""
        text: root.round.chanceLine
    }

    PlainText {
        objectName: "fromLine"
        width: parent.width
        visible: text !== ""
        text: root.round.fromLine
    }

    PlainText {
        objectName: "outLine"
        width: parent.width
        visible: text !== ""
        text: root.round.outLine
        font.bold: true
    }

    CautionList {
        width: parent.width
        sentences: root.round.leftOut
    }

    RoundWashed {
        width: parent.width
        round: root.round
    }
}
