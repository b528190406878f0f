// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic
import Halfcup
import Halfcup.Touch

// Instead of the app where its records cannot be opened. Nothing can be done here but read.
ApplicationWindow {
    id: window

    required property string sentence
    required property string detail

    width: 360
    height: 740
    visible: true
    title: qsTr("Halfcup")
    color: Look.page

    Sheet {
        shown: true
        title: qsTr("Halfcup cannot open its records")
        sentence: window.sentence
        actions: MainButton {
            objectName: "close"
            width: parent.width
            focus: true
            text: qsTr("Close Halfcup")
            onClicked: window.close()
        }

        QuietText {
            width: parent.width
            text: window.detail
        }
    }
}
