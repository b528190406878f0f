// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// What was so on a day: what was in the hive, when honey may be taken, where it stood.
PageFrame {
    id: page

    required property App app
    readonly property OnDayController day: page.app.onDay

    objectName: "onDayPage"
    context: page.day.context
    title: page.day.title
    subtitle: page.day.dayLine
    demo: page.day.demo
    onBackWanted: page.day.back() ? undefined : page.app.navigator.back()

    ScrollColumn {
        anchors.fill: parent
        spacing: Look.margin

        ChoiceList {
            width: parent.width
            visible: page.day.colonies.count > 0
            pickable: false
            rowName: "onDay"
            model: page.day.colonies
            onPicked: key => page.day.openColony(key)
        }

        Repeater {
            model: page.day.facts

            FactRow {
                width: parent ? parent.width : 0
                required title
                required detail
                required note
            }
        }
    }

    actions: MainButton {
        objectName: "mainAction"
        width: parent.width
        focus: true
        text: qsTr("Another day")
        onClicked: page.cover = "day"
    }

    sheets: Sheet {
        shown: page.cover === "day"
        title: qsTr("Which day?")
        sentence: page.day.dayLine
        actions: MainButton {
            id: show

            objectName: "showDay"
            width: parent.width
            text: qsTr("Show this day")
            onClicked: {
                if (typed.text === "" || page.day.typeDay(typed.text)) {
                    typed.text = "";
                    page.cover = "";
                }
            }
        }

        ProblemText {
            width: parent.width
            text: page.day.problem
        }

        LabelledField {
            id: typed

            width: parent.width
            label: qsTr("Day")
            hint: qsTr("Such as 1 July, or 2026-07-01")
            fieldName: "onDayField"
            onAccepted: show.clicked()
        }

        SideRow {
            width: parent.width

            SideButton {
                objectName: "onDayEarlier"
                text: qsTr("A day earlier")
                onClicked: page.day.earlier()
            }

            SideButton {
                objectName: "onDayLater"
                visible: page.day.canGoLater
                text: qsTr("A day later")
                onClicked: page.day.later()
            }
        }
    }
}
