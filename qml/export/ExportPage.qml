// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// Files for people: what, how, and one button.
PageFrame {
    id: page

    required property App app
    readonly property ExportController people: page.app.share.people

    objectName: "exportPage"
    title: qsTr("For people")
    demo: page.people.demo
    onBackWanted: page.app.navigator.back()

    ScrollColumn {
        anchors.fill: parent
        spacing: Look.gap

        ChoiceList {
            width: parent.width
            rowName: "what"
            pickable: true
            model: page.people.kinds
            onPicked: key => page.people.chooseKind(key)
        }

        ReportChoices {
            width: parent.width
            visible: page.people.report
            people: page.people
        }

        OptionPair {
            width: parent.width
            visible: page.people.table
            title: qsTr("Spreadsheet expects")
            first: qsTr("1.5, commas")
            second: qsTr("1,5; semicolons")
            secondChosen: page.people.semicolon
            pairName: "dialect"
            onPicked: isSecond => page.people.semicolon = isSecond
        }

        OptionPair {
            width: parent.width
            visible: page.people.placed
            title: qsTr("Where your hives stand")
            first: page.people.report ? qsTr("Leave out") : qsTr("Blurred")
            second: qsTr("Exact, this time")
            secondChosen: page.people.exact
            pairName: "positions"
            onPicked: isSecond => page.people.exact = isSecond
        }

        QuietText {
            width: parent.width
            visible: page.people.placed
            text: page.people.positionsLine
        }
    }

    actions: [
        ResultText {
            width: parent.width
            failed: page.people.failed
            text: page.people.result
        },
        MainButton {
            objectName: "mainAction"
            width: parent.width
            focus: true
            text: page.people.action
            onClicked: page.people.write()
        }
    ]
}
