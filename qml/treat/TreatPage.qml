// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// What to treat with: all there is, what fits first.
PageFrame {
    id: page

    required property App app
    readonly property TreatController treat: page.app.treat

    objectName: "treatPage"
    context: page.treat.context
    title: qsTr("What to treat with")
    subtitle: page.treat.line
    demo: page.treat.demo
    cornerText: page.treat.canWiden ? qsTr("Whole yard") : ""
    onBackWanted: page.app.navigator.back()
    onCornerPressed: page.treat.widen()

    ScrollList {
        anchors.fill: parent
        visible: page.treat.choices.count > 0
        model: page.treat.choices

        delegate: HeadedRow {
            id: row

            required property int index
            required property string key
            required property string title
            required property string detail
            required property int standing
            required property string note
            required property string section

            heading: row.section

            TreatRow {
                objectName: "choice-" + row.key
                title: row.title
                detail: row.detail
                standing: row.standing
                verdictWord: row.note
                ruled: row.index < page.treat.choices.count - 1
                onClicked: page.treat.openChoice(row.key)
            }
        }
    }

    ProblemText {
        width: parent.width
        text: page.treat.problem
    }

    actions: MainButton {
        objectName: "mainAction"
        width: parent.width
        focus: true
        text: qsTr("What is so now")
        detail: page.treat.hasForecast ? qsTr("weather, supers, brood") : qsTr("type the forecast; supers, brood")
        onClicked: page.treat.openSituation()
    }
}
