// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// The tables that lie in the phone's folders.
ScrollColumn {
    id: root

    required property ImportController table

    PlainText {
        objectName: "filesLine"
        width: parent.width
        text: root.table.filesLine
        wrapMode: Text.WrapAtWordBoundaryOrAnywhere
    }

    ChoiceList {
        width: parent.width
        pickable: false
        rowName: "file"
        model: root.table.files
        onPicked: key => root.table.openFile(key)
    }
}
