// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// The keeper's settings. Each change holds at once.
PageFrame {
    id: page

    required property App app
    readonly property SetupController setup: page.app.setup

    objectName: "setupPage"
    demo: page.app.here.demo
    title: qsTr("Setup")
    onBackWanted: page.app.navigator.back()

    ScrollColumn {
        anchors.fill: parent
        spacing: Look.gap

        OptionPair {
            width: parent.width
            title: qsTr("Phone held in")
            first: qsTr("Right hand")
            second: qsTr("Left hand")
            pairName: "hand"
            secondChosen: page.setup.leftHand
            onPicked: isSecond => page.setup.leftHand = isSecond
        }

        OptionPair {
            width: parent.width
            title: qsTr("Light")
            first: qsTr("Day")
            second: qsTr("Dusk")
            pairName: "light"
            secondChosen: page.setup.dusk
            onPicked: isSecond => page.setup.dusk = isSecond
        }

        OptionPair {
            width: parent.width
            title: qsTr("What you touch")
            first: qsTr("Large")
            second: qsTr("Larger still")
            pairName: "gloves"
            secondChosen: page.setup.thickGloves
            onPicked: isSecond => page.setup.thickGloves = isSecond
        }

        HeadText {
            width: parent.width
            text: qsTr("Size of letters: %1").arg(page.setup.textLine)
        }

        SideRow {
            width: parent.width

            SideButton {
                objectName: "lettersSmaller"
                text: qsTr("Smaller")
                onClicked: page.setup.lettersSmaller()
            }

            SideButton {
                objectName: "lettersLarger"
                text: qsTr("Larger")
                onClicked: page.setup.lettersLarger()
            }
        }

        OptionPair {
            width: parent.width
            title: qsTr("Sounds of the timer")
            first: qsTr("On")
            second: qsTr("Off")
            pairName: "sound"
            secondChosen: !page.setup.sound
            onPicked: isSecond => page.setup.sound = !isSecond
        }

        OptionPair {
            width: parent.width
            visible: page.setup.voiceWorks
            title: qsTr("Voice: half time, ten seconds, every fifth mite")
            first: qsTr("On")
            second: qsTr("Off")
            pairName: "voice"
            secondChosen: !page.setup.voice
            onPicked: isSecond => page.setup.voice = !isSecond
        }

        HeadText {
            width: parent.width
            text: qsTr("Language")
        }

        ChoiceList {
            width: parent.width
            rowName: "language"
            model: page.setup.languages
            onPicked: code => page.setup.chooseLanguage(code)
        }

        OptionPair {
            width: parent.width
            title: qsTr("Lengths and temperatures")
            first: qsTr("m, °C")
            second: qsTr("ft, °F")
            pairName: "units"
            secondChosen: page.setup.usUnits
            onPicked: isSecond => page.setup.usUnits = isSecond
        }

        HeadText {
            width: parent.width
            text: qsTr("Time to shake: %1").arg(page.setup.shakeText)
        }

        SideRow {
            width: parent.width

            SideButton {
                objectName: "shakeShorter"
                text: qsTr("Shorter")
                onClicked: page.setup.shakeShorter()
            }

            SideButton {
                objectName: "shakeLonger"
                text: qsTr("Longer")
                onClicked: page.setup.shakeLonger()
            }
        }

        HeadText {
            width: parent.width
            text: qsTr("Your usual way to count")
        }

        ChoiceList {
            width: parent.width
            rowName: "usualMethod"
            model: page.setup.methods
            onPicked: key => page.setup.chooseMethod(key)
        }

        HeadText {
            width: parent.width
            text: qsTr("Your usual scoop")
        }

        ChoiceList {
            width: parent.width
            rowName: "usualScoop"
            model: page.setup.scoops
            onPicked: key => page.setup.chooseScoop(key)
        }

        SideButton {
            objectName: "ownScoops"
            width: parent.width
            text: qsTr("Your counted scoops")
            onClicked: page.app.navigator.open(Navigator.OwnScoops)
        }

        SetupSource {
            width: parent.width
            setup: page.setup
        }

        SideButton {
            objectName: "sources"
            width: parent.width
            text: qsTr("Where the figures come from")
            onClicked: {
                page.app.sources.show("lines");
                page.app.navigator.open(Navigator.Sources);
            }
        }

        SideButton {
            objectName: "whatThisIsNot"
            width: parent.width
            text: page.setup.whatThisIsNotTitle
            onClicked: page.app.navigator.open(Navigator.FirstStart)
        }

        FactRow {
            width: parent.width
            title: page.setup.versionLine
            note: page.setup.databaseLine
        }
    }

    actions: MainButton {
        objectName: "mainAction"
        width: parent.width
        focus: true
        text: qsTr("Done")
        onClicked: page.app.navigator.back()
    }
}
