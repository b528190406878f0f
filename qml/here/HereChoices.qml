// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// The yards to pick from where the position alone cannot tell.
ScrollColumn {
    id: root

    required property HereController here

    HeadText {
        width: parent.width
        visible: root.here.yardChoices.count > 0
        text: qsTr("Or pick one of your yards")
    }

    ChoiceList {
        width: parent.width
        pickable: false
        rowName: "yard"
        model: root.here.yardChoices
        onPicked: key => root.here.pickYard(key)
    }
}
