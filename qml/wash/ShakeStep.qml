// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// The seconds, read at arm's length. The colour of the ring changes with the words, never alone.
WashStep {
    id: step

    readonly property ShakeController shake: step.wash.shake
    readonly property bool paused: step.shake.phase === ShakeController.Paused
    // On a small phone the seconds need the room: Pause stands beside Stop, and the sound is left to Setup.
    readonly property bool small: step.height < 100 * Look.pixelsPerMm
    readonly property bool over: step.shake.phase === ShakeController.Over

    objectName: "shakeStep"
    title: step.wash.title

    Item {
        id: face

        // The words under the ring may take a third of the height, and the ring keeps its size when they become fewer or
        // more: else all of it moves at half time.
        readonly property real wordHeight: Math.min(twoLines.implicitHeight, face.height * 0.36)
        readonly property real side: Math.max(0, Math.min(width, height - face.wordHeight - Look.margin * 0.7))
        // Where the ring is small, the figure alone has all of it.
        readonly property bool saysUnit: face.side > 22 * Look.pixelsPerMm

        anchors.fill: parent

        PlainText {
            id: twoLines

            visible: false
            text: "\n"
            font.weight: Font.Medium
            Accessible.ignored: true
        }

        ShakeRing {
            id: ring

            objectName: "ring"
            anchors.horizontalCenter: parent.horizontalCenter
            width: face.side
            height: face.side
            fraction: step.shake.fraction
            thickness: face.side * 0.075
            ringColor: step.shake.phase === ShakeController.FirstHalf ? Look.action : step.paused ? Look.quietInk : step.over ? Look.ink : Look.honey
            restColor: Look.line
            Accessible.ignored: true
        }

        Column {
            anchors.centerIn: ring
            width: face.side * 0.7

            FigureText {
                objectName: "seconds"
                width: parent.width
                height: face.side * (face.saysUnit ? 0.44 : 0.6)
                text: step.shake.secondsLeft
                horizontalAlignment: Text.AlignHCenter
            }

            PlainText {
                width: parent.width
                height: face.side * 0.18
                visible: face.saysUnit
                text: step.shake.unit
                font.pixelSize: face.side > 220 ? Look.bodySize : Look.smallSize
                fontSizeMode: Text.Fit
                minimumPixelSize: 11
                lineHeight: 1.0
                horizontalAlignment: Text.AlignHCenter
            }
        }

        PoliteLine {
            objectName: "announced"
            anchors.fill: ring
            text: step.shake.announced
        }

        PlainText {
            id: word

            objectName: "shakeWord"
            anchors.top: ring.bottom
            anchors.topMargin: Look.margin * 0.7
            width: parent.width
            height: face.wordHeight
            text: step.shake.word
            font.weight: Font.Medium
            fontSizeMode: Text.Fit
            minimumPixelSize: 12
            lineHeight: 1.0
            horizontalAlignment: Text.AlignHCenter
        }
    }

    actions: [
        SideRow {
            width: parent.width
            visible: !step.small

            SideButton {
                objectName: "pauseShake"
                enabled: !step.over
                text: step.paused ? qsTr("Go on") : qsTr("Pause")
                onClicked: step.paused ? step.shake.goOn() : step.shake.pause()
            }

            SideButton {
                objectName: "sound"
                text: step.shake.sound ? qsTr("Sound is on") : qsTr("Sound is off")
                onClicked: step.shake.sound = !step.shake.sound
            }
        },
        Row {
            width: parent.width
            spacing: Look.gap

            SideButton {
                objectName: "pauseShakeTight"
                visible: step.small
                width: 1.2 * Look.touchHeight
                height: stop.height
                enabled: !step.over
                text: step.paused ? qsTr("Go on") : qsTr("Pause")
                onClicked: step.paused ? step.shake.goOn() : step.shake.pause()
            }

            MainButton {
                id: stop

                objectName: "mainAction"
                width: step.small ? parent.width - 1.2 * Look.touchHeight - Look.gap : parent.width
                focus: true
                text: step.shake.stopAction
                detail: step.tight ? "" : step.shake.stopDetail
                onClicked: step.wash.endShake()
            }
        }
    ]
}
