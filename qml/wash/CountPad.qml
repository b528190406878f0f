// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// A count that was made without the phone.
NumberPad {
    id: pad

    required property CountController count

    signal closed

    title: pad.count.whatIsCounted
    problem: pad.count.problem
    onEdited: pad.count.clearProblem()
    onCancelled: pad.closed()
    onEntered: typed => pad.count.type(typed) ? pad.closed() : undefined
}
