// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
import QtQuick.Controls.Basic

ApplicationWindow {
    width: 360
    height: 740
    visible: true
}
