// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// The season: what runs and what comes, in all yards.
PageFrame {
    id: page

    required property App app
    readonly property SeasonController season: page.app.season

    objectName: "seasonPage"
    title: qsTr("Season")
    subtitle: page.season.summary
    demo: page.season.demo
    cornerText: qsTr("Share")
    onBackWanted: page.app.navigator.back()
    onCornerPressed: page.app.navigator.open(Navigator.Share)

    ScrollList {
        anchors.fill: parent
        model: page.season.dates

        header: Column {
            spacing: Look.margin * 0.6
            bottomPadding: Look.margin

            ResultText {
                width: parent.width
                failed: page.season.failed
                text: page.season.result
            }

            ChoiceRow {
                objectName: "backupReminder"
                width: parent.width
                visible: page.app.backup.reminder !== ""
                title: page.app.backup.reminder
                detail: qsTr("Keep them safe")
                ruled: false
                onClicked: page.app.navigator.open(Navigator.Backup)
            }

            SeasonStrip {
                width: parent.width
                season: page.season
            }

            PlainText {
                width: parent.width
                visible: page.season.dates.count === 0
                text: qsTr("Nothing is due in the year ahead. Make a yard and its colonies first.")
            }
        }

        footer: MarksMeaning { // of the strip at the top
            width: ListView.view ? ListView.view.width : implicitWidth
            topPadding: Look.gap
            legend: page.season.legend
        }

        delegate: HeadedRow {
            id: row

            required property int index
            required property string key
            required property string title
            required property string detail
            required property string note
            required property string section

            heading: row.section

            ChoiceRow {
                objectName: "date-" + row.index
                title: row.title
                detail: row.detail
                note: row.note
                ruled: row.index < page.season.dates.count - 1
                onClicked: page.season.open(row.key)
            }
        }
    }

    actions: MainButton {
        objectName: "mainAction"
        width: parent.width
        focus: true
        text: qsTr("Write the calendar")
        detail: qsTr("iCalendar, with alarms")
        onClicked: page.season.writeCalendar()
    }
}
