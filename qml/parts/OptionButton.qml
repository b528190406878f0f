// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Halfcup
import Halfcup.Touch

// One of a few side by side. The dot tells which is chosen.
PressButton {
    id: control

    property bool chosen: false

    implicitWidth: Look.touchHeight
    implicitHeight: Math.max(Look.touchHeight, label.implicitHeight + Look.margin)
    Layout.fillWidth: true
    Layout.fillHeight: true
    Layout.preferredWidth: 1
    Layout.minimumWidth: Look.touchHeight
    Accessible.role: Accessible.RadioButton
    Accessible.checkable: true
    Accessible.checked: control.chosen

    contentItem: Item {
        Rectangle {
            id: dot

            x: Look.margin * 0.8
            anchors.verticalCenter: parent.verticalCenter
            width: 3.4 * Look.pixelsPerMm
            height: width
            radius: width / 2
            color: Look.page
            border.width: Look.hairline
            border.color: Look.ink

            Rectangle {
                anchors.centerIn: parent
                width: parent.width * 0.56
                height: width
                radius: width / 2
                color: Look.ink
                visible: control.chosen
            }
        }

        PlainText {
            id: label

            anchors.verticalCenter: parent.verticalCenter
            anchors.left: dot.right
            anchors.leftMargin: Look.margin * 0.5
            anchors.right: parent.right
            anchors.rightMargin: 4
            text: control.text
            font.weight: control.chosen ? Font.Bold : Font.Medium
            Accessible.ignored: true
        }
    }

    background: Rectangle {
        radius: Look.corner
        color: control.down ? Look.line : control.chosen ? Look.field : Look.page
        border.width: control.chosen ? 3 : Look.hairline
        border.color: Look.ink
    }
}
