// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// What if: the load ahead with and without it, begun now or later.
Column {
    id: root

    required property ChoiceController choice

    spacing: Look.margin * 0.8

    HeadText {
        width: parent.width
        text: qsTr("What if")
    }

    QuietText {
        objectName: "startLine"
        width: parent.width
        text: root.choice.startLine
    }

    OutlookItem {
        objectName: "outlook"
        width: parent.width
        height: Math.min(42 * Look.pixelsPerMm, width * 0.75)
        visible: root.choice.hasOutlook
        picture: root.choice.picture
        dusk: Look.dusk
        fontFamily: Look.fontFamily
        normalSize: Look.bodySize
        smallSize: Look.smallSize
        Accessible.role: Accessible.Graphic
        Accessible.name: root.choice.nothingLine + " " + root.choice.withLine
    }

    LegendItem {
        objectName: "outlookLegend"
        width: parent.width
        implicitHeight: drawnHeight
        visible: root.choice.hasOutlook
        legend: root.choice.legend
        dusk: Look.dusk
        fontFamily: Look.fontFamily
        normalSize: Look.bodySize
        smallSize: Look.smallSize
        Accessible.role: Accessible.StaticText
        Accessible.name: root.choice.legend.spoken
    }

    PlainText {
        objectName: "nothingLine"
        width: parent.width
        text: root.choice.nothingLine
    }

    PlainText {
        objectName: "withLine"
        width: parent.width
        text: root.choice.withLine
        font.bold: true
    }

    SideRow {
        width: parent.width
        visible: root.choice.hasOutlook

        SideButton {
            objectName: "sooner"
            enabled: root.choice.canWaitLess
            text: qsTr("Sooner")
            onClicked: root.choice.waitLess()
        }

        SideButton {
            objectName: "later"
            enabled: root.choice.canWaitMore
            text: qsTr("Later")
            onClicked: root.choice.waitMore()
        }
    }

    PlainText {
        objectName: "waitText"
        width: parent.width
        visible: root.choice.hasOutlook
        text: root.choice.waitText
        horizontalAlignment: Text.AlignHCenter
    }

    Repeater {
        model: root.choice.outlookNotes

        QuietText {
            required property string modelData

            width: root.width
            text: modelData
        }
    }
}
