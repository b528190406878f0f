// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick

// Keeps what has the keyboard in sight, in whatever moves under the finger.
Item {
    id: root

    required property Flickable flickable
    required property Item content // what moves

    function show(item: Item) {
        const view = root.flickable;
        const top = item.mapToItem(root.content, 0, 0).y;
        if (top < view.contentY)
            view.contentY = Math.max(view.originY, top - 8);
        else if (top + item.height > view.contentY + view.height)
            view.contentY = Math.min(top - 8, top + item.height - view.height + 8); // what is higher: its beginning
    }

    function holds(item: Item): bool {
        for (let each = item; each; each = each.parent)
            if (each === root.content)
                return true;
        return false;
    }

    Connections {
        target: root.Window.window
        function onActiveFocusItemChanged() {
            const item = root.Window.activeFocusItem;
            if (item && root.holds(item))
                root.show(item);
        }
    }
}
