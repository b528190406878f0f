// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// One colony: what is due, how it stands, and its story.
PageFrame {
    id: page

    required property App app
    readonly property ColonyController colony: page.app.colony

    objectName: "colonyPage"
    context: page.colony.yardName
    title: page.colony.title
    subtitle: page.colony.dueLine
    demo: page.colony.demo
    cornerText: qsTr("On a day")
    onBackWanted: page.app.navigator.back()
    onCornerPressed: page.colony.openDay()

    ScrollList {
        anchors.fill: parent
        model: page.colony.story

        header: ColonyHead {
            colony: page.colony
        }

        footer: ColonyFoot {
            colony: page.colony
            onNameWanted: page.cover = "name"
        }

        delegate: ChoiceRow {
            id: row

            required property int index
            required property string key
            required title
            required detail
            required note
            required standing

            objectName: "story-" + row.index
            showsStanding: row.standing !== StandingWord.Unknown
            ruled: row.index < page.colony.story.count - 1
            onClicked: page.colony.openStory(row.key)
        }
    }

    actions: MainButton {
        objectName: "mainAction"
        width: parent.width
        focus: true
        text: page.colony.alive ? page.colony.mainAction : qsTr("Back")
        onClicked: page.colony.alive ? page.colony.wash() : page.app.navigator.back()
    }

    sheets: WhenWanted {
        anchors.fill: parent
        wanted: page.cover === "name"

        ColonyName {
            colony: page.colony
            shown: page.cover === "name"
            onDone: page.cover = ""
        }
    }
}
