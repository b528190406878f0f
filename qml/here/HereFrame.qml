// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// What is the same wherever the keeper stands.
PageFrame {
    id: frame

    required property App app
    readonly property HereController here: frame.app.here
    readonly property bool roomForThree: frame.width >= 3 * Look.touchHeight + 2 * Look.gap + 2 * Look.margin

    hasBack: false
    title: frame.here.title
    subtitle: frame.here.placeLine
    demo: frame.here.demo
    cornerText: qsTr("Setup")
    onCornerPressed: frame.app.navigator.open(Navigator.Setup)
}
