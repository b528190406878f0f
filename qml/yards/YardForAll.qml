// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// What is done or asked for all colonies of a yard at once.
Column {
    id: root

    required property YardsController yards

    signal leaving(var go) // the page keeps what was typed, then goes

    spacing: Look.gap

    HeadText {
        width: parent.width
        text: qsTr("For all its colonies")
    }

    SideRow {
        width: parent.width

        SideButton {
            objectName: "supersOnAll"
            text: qsTr("Supers on")
            spoken: qsTr("Supers on, all colonies")
            onClicked: root.leaving(() => root.yards.supersForAll(true))
        }

        SideButton {
            objectName: "supersOffAll"
            text: qsTr("Supers off")
            spoken: qsTr("Supers off, all colonies")
            onClicked: root.leaving(() => root.yards.supersForAll(false))
        }
    }

    SideRow {
        width: parent.width

        SideButton {
            objectName: "treatAll"
            text: qsTr("Treat")
            spoken: qsTr("Treat all colonies")
            onClicked: root.leaving(() => root.yards.treatAll())
        }

        SideButton {
            objectName: "yardOnADay"
            text: qsTr("On a day")
            spoken: qsTr("On a day, all colonies")
            onClicked: root.leaving(() => root.yards.openDay())
        }
    }
}
