// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup

// A substance or a measure: its verdict by its mark, and the gravest reason.
RowButton {
    id: row

    required property string title
    required property int standing // a VerdictMark.Value
    required property string verdictWord

    text: row.title
    spoken: row.title + ". " + (row.verdictWord !== "" ? row.verdictWord + ". " : "") + row.detail

    contentItem: TreatRowWords {
        title: row.title
        detail: row.detail
        verdict: row.standing
    }
}
