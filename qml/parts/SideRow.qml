// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup.Touch

// Buttons side by side, all of one width; the order is mirrored for the left hand.
SideBySide {
    property bool givesWay: true // on a page without room, into what scrolls

    spacing: Look.gap
    mirrored: LayoutMirroring.enabled
}
