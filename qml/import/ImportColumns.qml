// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// What a wash needs, and the column that holds it. Touching one asks for another.
ScrollColumn {
    id: root

    required property ImportController table
    readonly property alias typedYard: yard.text

    signal fieldWanted(string key)

    CautionText {
        objectName: "orderQuestion"
        width: parent.width
        visible: root.table.orderQuestion !== ""
        text: root.table.orderQuestion
    }

    ChoiceList {
        width: parent.width
        visible: root.table.orders.count > 0
        rowName: "order"
        model: root.table.orders
        onPicked: key => root.table.pickOrder(key)
    }

    ChoiceList {
        width: parent.width
        pickable: false
        rowName: "field"
        model: root.table.fields
        onPicked: key => root.fieldWanted(key)
    }

    Column {
        width: parent.width
        visible: root.table.asksYard
        spacing: Look.gap

        HeadText {
            width: parent.width
            text: qsTr("In which yard were these washes?")
        }

        ChoiceList {
            width: parent.width
            visible: root.table.yards.count > 0
            rowName: "yard"
            model: root.table.yards
            onPicked: key => root.table.typeYard(key)
        }

        LabelledField {
            id: yard

            width: parent.width
            label: qsTr("Name of the yard")
            hint: qsTr("For all rows. A name that is not there yet makes a new yard.")
            fieldName: "yardForAll"
            text: root.table.yardForAll
            onEdited: root.table.typeYard(yard.text)
        }
    }
}
