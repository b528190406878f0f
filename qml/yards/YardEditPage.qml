// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// A yard: its name, its place, its lines, its colonies.
PageFrame {
    id: page

    required property App app
    readonly property YardsController yards: page.app.yards

    objectName: "yardEditPage"
    title: page.yards.isNew ? qsTr("A new yard") : page.yards.name
    demo: page.yards.demo
    onBackWanted: page.app.navigator.back()

    function save(): bool {
        return page.yards.saveAll(name.text, treatLine.text, ownLine.text, year.turnDate, year.firstWash);
    }

    ScrollColumn {
        anchors.fill: parent
        spacing: Look.margin

        ProblemText {
            width: parent.width
            text: page.yards.problem
        }

        LabelledField {
            id: name

            width: parent.width
            label: qsTr("Name of the yard")
            fieldName: "yardName"
            text: page.yards.name
        }

        FactRow {
            width: parent.width
            title: qsTr("Place")
            detail: page.yards.positionLine
        }

        SideButton {
            objectName: "useThisPlace"
            width: parent.width
            text: qsTr("Use this place")
            onClicked: page.yards.useThisPlace()
        }

        YardColonies {
            width: parent.width
            visible: !page.yards.isNew
            yards: page.yards
            onPlanWanted: page.save() ? page.yards.openPlan() : undefined
        }

        YardForAll {
            width: parent.width
            visible: !page.yards.isNew
            yards: page.yards
            onLeaving: go => page.save() ? go() : undefined
        }

        LabelledField {
            id: treatLine

            width: parent.width
            label: qsTr("Treat line, mites per 100 bees")
            hint: page.yards.treatLineSource
            fieldName: "treatLine"
            inputMethodHints: Qt.ImhFormattedNumbersOnly
            text: page.yards.treatLine
        }

        LabelledField {
            id: ownLine

            width: parent.width
            label: qsTr("Your own, stricter line")
            hint: qsTr("Leave it empty where you have none.")
            fieldName: "ownLine"
            inputMethodHints: Qt.ImhFormattedNumbersOnly
            text: page.yards.ownLine
        }

        PlainText {
            objectName: "followedLine"
            width: parent.width
            text: page.yards.followedLine
        }

        SideButton {
            objectName: "yardLines"
            width: parent.width
            visible: !page.yards.isNew
            text: qsTr("Lines through the year")
            onClicked: page.save() ? page.yards.openLines() : undefined
        }

        YardYear {
            id: year

            width: parent.width
            yards: page.yards
        }

        SideButton {
            objectName: "yardHistory"
            width: parent.width
            visible: !page.yards.isNew
            quiet: true
            text: qsTr("What changed")
            onClicked: page.save() ? page.yards.openHistory() : undefined
        }
    }

    actions: [
        MainButton {
            objectName: "mainAction"
            width: parent.width
            visible: page.yards.isNew
            text: qsTr("Keep this yard")
            detail: qsTr("then add its colonies")
            onClicked: page.save()
        },
        MainButton {
            objectName: "done"
            width: parent.width
            visible: !page.yards.isNew
            text: qsTr("Done")
            onClicked: page.save() ? page.app.navigator.home() : undefined
        }
    ]
}
