// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick

// Room for what a page puts there, as high as that is; none where there is nothing.
Item {
    signal wanted(item: Item) // to be brought into sight

    implicitHeight: childrenRect.height
    visible: children.length > 0
}
