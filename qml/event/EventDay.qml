// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// When it happened: a day back or on, or typed.
Column {
    id: root

    required property EventController event

    // True where nothing is typed, or a day that can be.
    function take(): bool {
        if (day.text === "")
            return true;
        const taken = root.event.typeDay(day.text);
        if (taken)
            day.text = "";
        return taken;
    }

    spacing: Look.margin

    SideRow {
        width: parent.width

        SideButton {
            objectName: "dayEarlier"
            text: qsTr("A day earlier")
            onClicked: root.event.earlier()
        }

        SideButton {
            objectName: "dayLater"
            visible: root.event.canGoLater
            text: qsTr("A day later")
            onClicked: root.event.later()
        }
    }

    LabelledField {
        id: day

        width: parent.width
        label: qsTr("Another day")
        hint: qsTr("Such as 3 May, or 2026-05-03")
        fieldName: "eventDay"
        onEdited: root.take()
    }
}
