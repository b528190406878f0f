// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// Counts on the press, not on the release, and each finger for itself: twenty a second are not too many.
FocusScope {
    id: face

    required property CountController count

    // Too low for both: what to do, until it was done once, then the figure.
    readonly property bool low: face.height < hints.implicitHeight + 16 * Look.pixelsPerMm

    focus: true

    Rectangle {
        anchors.fill: parent
        radius: Look.corner
        color: Look.field
        border.width: face.activeFocus ? 3 : Look.hairline
        border.color: Look.action
    }

    Item {
        id: button

        objectName: "countField"
        anchors.fill: parent
        focus: true
        activeFocusOnTab: true
        Accessible.role: Accessible.Button
        Accessible.name: face.count.oneMore
        Accessible.description: face.count.announced // the figure below has the last one too
        Accessible.focusable: true
        Accessible.onPressAction: face.count.tap()
        // A key that is held down is one mite, not a row of them.
        Keys.onSpacePressed: event => event.isAutoRepeat ? false : face.count.tap()
        Keys.onReturnPressed: event => event.isAutoRepeat ? false : face.count.tap()
        Keys.onEnterPressed: event => event.isAutoRepeat ? false : face.count.tap()

        Column {
            id: hints

            opacity: face.low ? 0 : 1 // and keeps its height
            anchors.bottom: parent.bottom
            anchors.bottomMargin: Look.margin * 0.8
            anchors.left: parent.left
            anchors.right: parent.right
            anchors.leftMargin: Look.margin * 0.8
            anchors.rightMargin: Look.margin * 0.8

            PlainText {
                width: parent.width
                text: face.count.hint
                font.weight: Font.Medium
                horizontalAlignment: Text.AlignHCenter
                lineHeight: 1.05
            }

            QuietText {
                width: parent.width
                visible: face.count.keysWork
                text: qsTr("or press a volume key")
                horizontalAlignment: Text.AlignHCenter
            }

            QuietText {
                width: parent.width
                visible: face.height > 55 * Look.pixelsPerMm
                text: qsTr("On wet glass, two touches of one point at once count as one.")
                horizontalAlignment: Text.AlignHCenter
            }
        }

        PlainText {
            anchors.fill: parent
            anchors.margins: Look.margin * 0.8
            visible: face.low && face.count.mites === 0
            text: face.count.hint
            font.weight: Font.Medium
            fontSizeMode: Text.Fit
            minimumPixelSize: 14
            horizontalAlignment: Text.AlignHCenter
            verticalAlignment: Text.AlignVCenter
        }

        FigureText {
            objectName: "figure"
            visible: !face.low || face.count.mites > 0
            anchors.top: parent.top
            anchors.bottom: face.low ? parent.bottom : hints.top
            anchors.left: parent.left
            anchors.right: parent.right
            anchors.leftMargin: Look.margin
            anchors.rightMargin: Look.margin
            text: face.count.mites
            largest: 38 * Look.pixelsPerMm
            horizontalAlignment: Text.AlignHCenter
            Accessible.name: face.count.spoken
        }

        TouchField {
            objectName: "countTouch"
            anchors.fill: parent
            pixelsPerMm: Look.pixelsPerMm
            onFingerDown: face.count.tap()
        }
    }
}
