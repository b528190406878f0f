// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

// These are not the keeper's own bees.
Badge {
    objectName: "demoBadge"
    text: qsTr("Demo")
}
