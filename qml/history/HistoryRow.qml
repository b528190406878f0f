// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup

// One value a field has had. What cannot be put back is to be read, not touched.
HeadedRow {
    id: root

    required property int index
    required property string key
    required property string title
    required property string detail
    required property string note
    required property string section

    signal picked

    heading: root.section

    ChoiceRow {
        objectName: "value-" + root.index
        visible: root.key !== ""
        title: root.title
        detail: root.detail
        note: root.note
        ruled: false
        onClicked: root.picked()
    }

    Column {
        x: 4 // where the words of a row that can be touched begin
        width: parent.width - 8
        visible: root.key === ""
        topPadding: 4
        bottomPadding: 4
        spacing: 1

        PlainText {
            width: parent.width
            text: root.title
        }

        QuietText {
            width: parent.width
            text: root.detail
        }

        QuietText {
            width: parent.width
            text: root.note
        }
    }

    Rule {
        width: parent.width
    }
}
