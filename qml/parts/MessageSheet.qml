// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// What went wrong, until the keeper has read it.
Sheet {
    id: sheet

    required property Messages messages

    objectName: "message"
    shown: sheet.messages.text !== ""
    title: qsTr("Please read")
    sentence: sheet.messages.text
    actions: MainButton {
        objectName: "understood"
        width: parent.width
        focus: true
        text: qsTr("Understood")
        onClicked: sheet.messages.dismiss()
    }
}
