// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// Digits for gloves: fills the page, needs no keyboard of the phone. The keys are as large as the page allows; on the
// smallest phone they take its whole width.
FocusScope {
    id: pad

    required property bool shown
    required property string title
    property string problem
    property string text
    readonly property real side: width < 3 * Look.touchHeight + 2 * Look.gap ? Look.margin : Math.min(Look.margin, (width - 3 * Look.touchHeight - 2 * Look.gap) / 2)

    signal entered(string typed)
    signal cancelled
    signal edited

    function put(digit: string) {
        pad.text = (pad.text + digit).substring(0, 6);
        pad.edited();
    }

    function take() {
        pad.text = pad.text.slice(0, -1);
        pad.edited();
    }

    anchors.fill: parent
    visible: pad.shown
    focus: pad.shown
    onShownChanged: pad.text = ""
    Keys.onReturnPressed: pad.entered(pad.text)
    Keys.onEnterPressed: pad.entered(pad.text)
    Keys.onPressed: event => {
        event.accepted = event.key >= Qt.Key_0 && event.key <= Qt.Key_9;
        if (event.accepted)
            pad.put(String(event.key - Qt.Key_0));
    }

    MouseArea {
        objectName: "backdrop"
        anchors.fill: parent
        Accessible.ignored: true
    }

    Rectangle {
        anchors.fill: parent
        color: Look.page
    }

    Item {
        id: top

        x: Look.margin
        y: pad.side
        width: parent.width - 2 * Look.margin
        height: Look.touchHeight
        LayoutMirroring.enabled: Look.leftHand
        LayoutMirroring.childrenInherit: true

        SideButton {
            id: cancel

            objectName: "padBack"
            anchors.left: parent.left
            width: Look.touchHeight
            quiet: true
            fontSize: Look.bodySize
            text: qsTr("Back")
            onClicked: pad.cancelled()
        }

        NumberPadFigure {
            anchors.left: cancel.right
            anchors.right: parent.right
            anchors.leftMargin: Look.margin
            height: parent.height
            title: pad.title
            problem: pad.problem
            text: pad.text
        }
    }

    NumberPadKeys {
        x: pad.side
        width: parent.width - 2 * pad.side
        anchors.top: top.bottom
        anchors.topMargin: Look.gap
        anchors.bottom: parent.bottom
        anchors.bottomMargin: Math.max(2, pad.side)
        onDigit: digit => pad.put(digit)
        onDeleted: pad.take()
        onDone: pad.entered(pad.text)
    }
}
