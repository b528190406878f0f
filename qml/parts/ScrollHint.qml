// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup

// Says that there is more than the page shows, in a strip of its own so that it covers nothing.
Item {
    id: hint

    required property Flickable flickable

    implicitHeight: word.implicitHeight + 6

    Rule {
        width: parent.width
    }

    QuietText {
        id: word

        anchors.bottom: parent.bottom
        width: parent.width
        horizontalAlignment: Text.AlignHCenter
        text: hint.flickable.atYEnd ? qsTr("↑ more above") : qsTr("↓ more below")
        Accessible.ignored: true
    }
}
