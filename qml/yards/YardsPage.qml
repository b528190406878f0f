// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// All yards. A touch goes there; the button beside it changes it.
PageFrame {
    id: page

    required property App app
    readonly property YardsController yards: page.app.yards

    objectName: "yardsPage"
    demo: page.app.here.demo
    title: qsTr("Yards")
    onBackWanted: page.app.navigator.back()

    ScrollList {
        anchors.fill: parent
        model: page.yards.yards

        header: Column {
            bottomPadding: page.app.same.count > 0 ? Look.gap : 0

            ChoiceRow {
                objectName: "maybeSame"
                width: parent.width
                visible: page.app.same.count > 0
                title: page.app.same.countLine
                detail: qsTr("made on two phones; look at them")
                onClicked: page.app.same.open()
            }
        }

        // Where something is joined and nothing is asked, the way to it is quiet and stands last.
        footer: Column {
            topPadding: page.app.same.joined.count > 0 ? Look.gap : 0

            SideButton {
                objectName: "shownAsOne"
                width: parent.width
                visible: page.app.same.joined.count > 0 && page.app.same.count === 0
                quiet: true
                text: qsTr("What is shown as one")
                onClicked: page.app.same.open()
            }
        }

        delegate: YardRow {
            id: row

            required property int index

            width: ListView.view.width
            ruled: row.index < page.yards.yards.count - 1
            onPicked: {
                page.app.here.pickYard(row.key);
                page.app.navigator.home();
            }
            onEdited: page.yards.edit(row.key)
        }
    }

    actions: MainButton {
        objectName: "mainAction"
        width: parent.width
        focus: true
        text: qsTr("Make a yard here")
        onClicked: page.yards.makeNew()
    }
}
