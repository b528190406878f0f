// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup

// What was done, or what went wrong.
Column {
    id: root

    required property bool failed
    required property string text

    visible: root.text !== ""

    ProblemText {
        width: parent.width
        text: root.failed ? root.text : ""
    }

    PlainText {
        objectName: "result"
        width: parent.width
        text: root.failed ? "" : root.text
        font.weight: Font.Medium
        wrapMode: Text.WrapAtWordBoundaryOrAnywhere
    }
}
