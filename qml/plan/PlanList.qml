// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// What taking in the file would do: how many of what, what is wrong with it, and the records one by one.
ScrollList {
    id: root

    required property PlanController plan

    model: root.plan.items

    header: PlanHead {
        plan: root.plan
    }

    delegate: HeadedRow {
        id: row

        required property int index
        required property string title
        required property string detail
        required property string note
        required property string section

        heading: row.section

        PlanRow {
            objectName: "item-" + row.index
            width: parent.width
            title: row.title
            detail: row.detail
            note: row.note
        }
    }

    footer: QuietText {
        topPadding: root.plan.moreItems !== "" ? Look.margin : 0
        text: root.plan.moreItems
    }
}
