// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick

// Something that is made when it is first wanted, and from then on hidden while it is not: what a page does not show
// costs nothing when the page is opened. What is made may take its width from its parent, which is this.
Item {
    id: place

    required property bool wanted
    property Item made
    default property Component content

    // A Loader of Qt 6.4 cannot make a bound inline component.
    function make() {
        if (place.wanted && !place.made)
            place.made = place.content.createObject(place) as Item;
    }

    visible: place.wanted
    implicitWidth: place.made ? place.made.implicitWidth : 0
    implicitHeight: place.made ? place.made.implicitHeight : 0
    onWantedChanged: place.make()
    Component.onCompleted: place.make()
}
