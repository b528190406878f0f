// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// The yard's round: how far it is, or what it is for.
ChoiceRow {
    id: row

    required property HereController here

    title: row.here.roundLine !== "" ? row.here.roundLine : qsTr("Yard round")
    detail: row.here.roundLine !== "" ? "" : qsTr("wash some colonies, know the whole yard")
    ruled: row.here.roundLine !== ""
    onClicked: row.here.openYardRound()
}
