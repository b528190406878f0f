// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// Where positions come from, for those who have a receiver of their own.
Column {
    id: root

    required property SetupController setup

    spacing: Look.margin

    LabelledField {
        id: source

        width: parent.width
        label: qsTr("Source of positions")
        hint: root.setup.positionSourceLine
        fieldName: "positionSource"
        inputMethodHints: Qt.ImhNoAutoUppercase | Qt.ImhNoPredictiveText
        text: root.setup.positionSource
        onAccepted: use.clicked()
    }

    ProblemText {
        width: parent.width
        text: root.setup.problem
    }

    SideButton {
        id: use

        objectName: "useSource"
        width: parent.width
        text: qsTr("Use this source")
        onClicked: root.setup.typePositionSource(source.text)
    }
}
