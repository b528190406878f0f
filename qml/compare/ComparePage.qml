// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// The colonies of a yard held against each other.
PageFrame {
    id: page

    required property App app
    readonly property CompareController compare: page.app.compare

    objectName: "comparePage"
    context: page.compare.yardName
    title: qsTr("Colonies compared")
    demo: page.compare.demo
    onBackWanted: page.app.navigator.back()

    ScrollColumn {
        anchors.fill: parent
        spacing: Look.gap

        YardComparisonItem {
            objectName: "comparison"
            width: parent.width
            implicitHeight: drawnHeight
            picture: page.compare.picture
            dusk: Look.dusk
            fontFamily: Look.fontFamily
            normalSize: Look.bodySize
            smallSize: Look.smallSize
            Accessible.role: Accessible.Graphic
            Accessible.name: page.compare.summary
        }

        MarksMeaning {
            width: parent.width
            legend: page.compare.legend
        }

        CompareWords {
            width: parent.width
            rows: page.compare.rows
        }
    }
}
