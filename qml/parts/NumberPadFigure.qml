// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// What is being typed, and what is wrong with it.
Item {
    id: root

    required property string title
    required property string problem
    required property string text

    QuietText {
        id: name

        width: parent.width
        visible: root.problem === ""
        text: root.title
        font.pixelSize: Math.floor(Math.min(Look.smallSize, root.height * 0.2))
        horizontalAlignment: Text.AlignRight
    }

    PlainText {
        id: wrong

        objectName: "problem"
        width: parent.width
        height: parent.height - figure.height
        verticalAlignment: Text.AlignVCenter
        visible: root.problem !== ""
        text: root.problem
        font.bold: true
        font.pixelSize: Look.smallSize
        lineHeight: 1.0
        fontSizeMode: Text.Fit
        minimumPixelSize: 11
        Accessible.role: Accessible.AlertMessage
    }

    FigureText {
        id: figure

        objectName: "padFigure"
        anchors.bottom: parent.bottom
        width: parent.width
        height: root.problem === "" ? parent.height - name.height : Math.min(Look.titleSize * 1.2, root.height * 0.4)
        text: root.text === "" ? "–" : root.text
        largest: Look.titleSize * 1.6
        horizontalAlignment: Text.AlignRight
        Accessible.name: root.text === "" ? qsTr("Nothing typed yet") : root.text
    }
}
