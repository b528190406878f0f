// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// A yard round: planned, under way, or ended.
PageFrame {
    id: page

    required property App app
    readonly property RoundController round: page.app.round
    readonly property bool going: page.round.view === RoundController.Going

    objectName: "roundPage"
    context: page.round.yardName
    title: qsTr("Yard round")
    subtitle: page.round.subtitle
    demo: page.round.demo
    onBackWanted: page.app.navigator.back()

    RoundPlan {
        anchors.fill: parent
        visible: page.round.view === RoundController.Planning
        round: page.round
    }

    RoundGoing {
        anchors.fill: parent
        visible: page.going
        round: page.round
        onEndWanted: page.round.clearLine !== "" ? page.round.end() : page.cover = "end"
    }

    RoundAnswer {
        anchors.fill: parent
        visible: page.round.view === RoundController.Ended
        round: page.round
    }

    actions: MainButton {
        objectName: "mainAction"
        width: parent.width
        focus: true
        visible: page.round.mainAction !== ""
        text: page.round.mainAction
        onClicked: page.round.act()
    }

    sheets: Sheet {
        shown: page.cover === "end"
        title: qsTr("End the round?")
        sentence: qsTr("The answer is not clear yet. What is washed stays; the yard's figure will have a wide range.")
        actions: [
            SideButton {
                objectName: "goOn"
                width: parent.width
                text: qsTr("Go on")
                onClicked: page.cover = ""
            },
            MainButton {
                objectName: "endAllTheSame"
                width: parent.width
                text: qsTr("End the round")
                onClicked: {
                    page.cover = "";
                    page.round.end();
                }
            }
        ]
    }
}
