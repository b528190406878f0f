// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// Where the keeper stands: the colonies of a yard, or yards to pick from, or the first start. Only the one of the three
// that is shown is read and made.
PageBase {
    id: page

    required property App app
    readonly property string file: {
        switch (page.app.here.view) {
        case HereController.AtYard:
            return "HereYard.qml";
        case HereController.NoYards:
            return "HereWelcome.qml";
        default:
            return "HereChoices.qml";
        }
    }

    objectName: "herePage"
    onFileChanged: here.show()

    Loader {
        id: here

        property string shown

        function show() {
            if (here.shown === page.file)
                return;
            here.shown = page.file;
            here.setSource(Qt.resolvedUrl(page.file), {
                "app": page.app
            });
        }

        anchors.fill: parent
        focus: true
        Component.onCompleted: here.show()
    }
}
