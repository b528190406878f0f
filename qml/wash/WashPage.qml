// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// A wash, or another method: the page of its present step.
PageBase {
    id: page

    required property App app

    objectName: "washPage"

    function goBack() {
        (steps.item as PageBase).goBack();
    }

    function fileOf(step: int): string {
        switch (step) {
        case WashController.Safety:
            return "SafetyStep.qml";
        case WashController.Scoop:
            return "ScoopStep.qml";
        case WashController.Pour:
            return "PourStep.qml";
        case WashController.Shake:
            return "ShakeStep.qml";
        case WashController.Settle:
            return "SettleStep.qml";
        case WashController.Count:
            return "CountStep.qml";
        case WashController.SecondRinse:
            return "SecondRinseStep.qml";
        case WashController.LayBoard:
            return "LayBoardStep.qml";
        case WashController.PullBoard:
            return "PullBoardStep.qml";
        case WashController.BoardCells:
            return "BoardCellsStep.qml";
        case WashController.OpenedCells:
            return "OpenedCellsStep.qml";
        default:
            return "ColonyStep.qml";
        }
    }

    Loader {
        id: steps

        property bool complete: false
        readonly property int step: page.app.wash.step

        function show() {
            steps.setSource(Qt.resolvedUrl(page.fileOf(steps.step)), {
                "app": page.app
            });
        }

        anchors.fill: parent
        focus: true
        // The first one once all is there: while this is being made, nothing else can be.
        onStepChanged: steps.complete ? steps.show() : undefined
        Component.onCompleted: {
            steps.complete = true;
            steps.show();
        }
    }
}
