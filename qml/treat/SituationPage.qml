// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// What is so now, at this colony or in this yard.
PageFrame {
    id: page

    required property App app
    readonly property SituationController situation: page.app.situation

    objectName: "situationPage"
    context: page.situation.context
    title: qsTr("What is so now")
    demo: page.situation.demo
    onBackWanted: page.app.navigator.back()

    ScrollColumn {
        anchors.fill: parent
        spacing: Look.margin

        DayField {
            width: parent.width
            label: qsTr("From")
            hint: ""
            fieldName: "from"
            text: page.situation.from
            onEdited: text => page.situation.typeFrom(text)
            onMoved: days => page.situation.moveFrom(days)
        }

        OptionPair {
            width: parent.width
            title: qsTr("Forecast in")
            first: qsTr("°C")
            second: qsTr("°F")
            pairName: "unit"
            secondChosen: page.situation.fahrenheit
            onPicked: isSecond => page.situation.setFahrenheit(isSecond)
        }

        LabelledField {
            id: highs

            width: parent.width
            label: qsTr("Daily highs")
            hint: page.situation.forecastHint
            fieldName: "highs"
            inputMethodHints: Qt.ImhNoPredictiveText
            text: page.situation.highs
            onEdited: page.situation.typeHighs(highs.text)
        }

        LabelledField {
            id: lows

            width: parent.width
            label: qsTr("Nightly lows")
            hint: qsTr("One for each high, or none.")
            fieldName: "lows"
            inputMethodHints: Qt.ImhNoPredictiveText
            text: page.situation.lows
            onEdited: page.situation.typeLows(lows.text)
        }

        SituationHive {
            width: parent.width
            situation: page.situation
        }

        QuietText {
            width: parent.width
            text: page.situation.keepNote
        }
    }

    // What is wrong stands beside the button that found it, wherever the page is scrolled to.
    actions: [
        ProblemText {
            width: parent.width
            text: page.situation.problem
        },
        MainButton {
            objectName: "mainAction"
            width: parent.width
            text: qsTr("Keep")
            detail: qsTr("and see what fits")
            onClicked: page.situation.keep()
        }
    ]
}
