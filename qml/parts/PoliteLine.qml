// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick

// Not seen: what a screen reader reads out by itself when it changes. Whoever fills it sees to it that it
// changes seldom.
Item {
    id: line

    required property string text

    Accessible.role: Accessible.AlertMessage
    Accessible.name: line.text
}
