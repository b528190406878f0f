// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// The loads of a colony over time, and the figures of the wash that was touched.
Column {
    id: root

    required property LoadChartController loads

    spacing: Look.margin * 0.6
    bottomPadding: Look.gap - Look.margin * 0.6 // buttons may follow

    LoadChartItem {
        id: chart

        objectName: "loadChart"
        width: parent.width
        height: width * 0.73
        picture: root.loads.picture
        dusk: Look.dusk
        fontFamily: Look.fontFamily
        normalSize: Look.bodySize
        smallSize: Look.smallSize
        Accessible.role: Accessible.Graphic
        Accessible.name: root.loads.spoken

        TapHandler {
            onTapped: point => root.loads.choose(chart.keyAt(point.position.x, point.position.y, Look.touchHeight))
        }
    }

    PlainText {
        objectName: "chosenWash"
        width: parent.width
        text: root.loads.chosenLine
    }

    SideRow {
        width: parent.width

        SideButton {
            objectName: "earlierWash"
            enabled: root.loads.canGoEarlier
            text: qsTr("Earlier wash")
            onClicked: root.loads.earlier()
        }

        SideButton {
            objectName: "laterWash"
            enabled: root.loads.canGoLater
            text: qsTr("Later wash")
            onClicked: root.loads.later()
        }
    }

    Item {
        width: 1
        height: Look.gap - 2 * parent.spacing
    }

    SideButton {
        objectName: "allYears"
        width: parent.width
        visible: root.loads.hasYears
        quiet: true
        text: root.loads.showsAll ? qsTr("Last season") : qsTr("All years")
        onClicked: root.loads.setShowsAll(!root.loads.showsAll)
    }

    Item {
        width: 1
        height: Look.gap - 2 * parent.spacing
        visible: root.loads.hasYears
    }

    MarksMeaning {
        id: meaning

        width: parent.width
        legend: root.loads.legend
    }

    QuietText {
        objectName: "chartInWords"
        width: parent.width
        visible: meaning.shown
        text: root.loads.spoken
    }
}
