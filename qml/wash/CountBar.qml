// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// Under the counting field. On the smallest phone the three need the whole width of the glass.
SideRow {
    id: bar

    required property CountController count
    required property real pageWidth
    // On a glass too narrow for the three, typing is where the page puts it.
    readonly property bool narrow: bar.pageWidth < 3 * Look.touchHeight + 2 * Look.gap - 1
    readonly property string typeText: qsTr("Type it")
    readonly property real missing: bar.narrow ? 0 : Math.max(0, 3 * Look.touchHeight + 2 * Look.gap - (parent ? parent.width : 0))

    signal typeWanted
    signal done
    signal noneSaid

    givesWay: false
    lastShare: 1.4
    x: -missing / 2
    width: (parent ? parent.width : 0) + missing
    height: Look.mainHeight

    SideButton {
        objectName: "undo"
        enabled: bar.count.canUndo
        fontSize: Look.bodySize
        text: qsTr("Undo last")
        onClicked: bar.count.undo()
    }

    SideButton {
        objectName: "typeIt"
        visible: !bar.narrow
        fontSize: Look.bodySize
        text: bar.typeText
        onClicked: bar.typeWanted()
    }

    MainButton {
        objectName: "mainAction"
        text: bar.count.mites > 0 ? qsTr("Done") : qsTr("None found")
        onClicked: bar.count.mites > 0 ? bar.done() : bar.noneSaid()
    }
}
