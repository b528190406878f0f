// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup.Touch

Rectangle {
    implicitHeight: 1
    color: Look.line
    Accessible.ignored: true
}
