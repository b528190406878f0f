// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick

// Before or after the rows of a list: room for what a page puts there.
Item {
    width: ListView.view ? ListView.view.width : 0
    implicitHeight: childrenRect.height
}
