// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// The wash: the page of its present step.
PageBase {
    id: page

    required property App app
    readonly property WashController wash: page.app.wash

    objectName: "washPage"

    function goBack() {
        (steps.item as PageBase).goBack();
    }

    Loader {
        id: steps

        anchors.fill: parent
        focus: true
        sourceComponent: {
            switch (page.wash.step) {
            case WashController.Safety:
                return safety;
            case WashController.Scoop:
                return scoop;
            case WashController.Pour:
                return pour;
            case WashController.Shake:
                return shake;
            case WashController.Settle:
                return settle;
            case WashController.Count:
                return count;
            case WashController.SecondRinse:
                return secondRinse;
            default:
                return colony;
            }
        }
    }

    Component {
        id: colony
        ColonyStep {
            wash: page.wash
        }
    }
    Component {
        id: safety
        SafetyStep {
            wash: page.wash
        }
    }
    Component {
        id: scoop
        ScoopStep {
            wash: page.wash
            onSourcesWanted: {
                page.app.sources.show("scoop");
                page.app.navigator.open(Navigator.Sources);
            }
        }
    }
    Component {
        id: pour
        PourStep {
            wash: page.wash
        }
    }
    Component {
        id: shake
        ShakeStep {
            wash: page.wash
        }
    }
    Component {
        id: settle
        SettleStep {
            wash: page.wash
        }
    }
    Component {
        id: count
        CountStep {
            wash: page.wash
        }
    }
    Component {
        id: secondRinse
        SecondRinseStep {
            wash: page.wash
        }
    }
}
