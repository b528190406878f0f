// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// All that can happen to a colony, two side by side, each as large as a glove.
ScrollColumn {
    id: root

    required property EventController event

    SideRow {
        width: parent.width
        columns: 2

        Repeater {
            model: root.event.kinds

            SideButton {
                id: kind

                required property string key
                required property string title

                objectName: "kind-" + kind.key
                text: kind.title
                onClicked: root.event.pick(kind.key)
            }
        }
    }
}
