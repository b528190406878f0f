// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import Halfcup.Touch

// Second to what stands beside it; still read at arm's length.
PlainText {
    color: Look.quietInk
    font.pixelSize: Look.smallSize
}
