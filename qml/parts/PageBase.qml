// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick

// What the window asks of any page.
FocusScope {
    focus: true

    // The Back key: what is open over the page first, then the page itself.
    function goBack() {}
}
