// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// The ways to count. Touching one begins it.
PageFrame {
    id: page

    required property App app
    readonly property MethodsController methods: page.app.methods

    objectName: "methodsPage"
    context: page.methods.context
    title: qsTr("How to count?")
    demo: page.methods.demo
    onBackWanted: page.app.navigator.back()

    ScrollColumn {
        anchors.fill: parent

        ChoiceList {
            width: parent.width
            rowName: "method"
            pickable: false
            model: page.methods.methods
            onPicked: key => page.methods.pick(key)
        }
    }
}
