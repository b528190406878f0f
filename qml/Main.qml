// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic
import Halfcup
import Halfcup.Touch

// The window: the page that the navigator names, and over it what the keeper must read first.
ApplicationWindow {
    id: window

    required property App app

    width: 360
    height: 740
    minimumWidth: 300
    minimumHeight: 480
    visible: true
    title: qsTr("Halfcup")
    color: Look.page

    Shortcut {
        sequences: ["Esc", "Back"]
        onActivated: message.visible ? window.app.messages.dismiss() : (pages.item as PageBase).goBack()
    }

    Loader {
        id: pages

        objectName: "pages"
        anchors.fill: parent
        focus: !message.visible
        visible: !message.visible
        sourceComponent: {
            switch (window.app.navigator.page) {
            case Navigator.Yards:
                return yards;
            case Navigator.YardEdit:
                return yardEdit;
            case Navigator.Wash:
                return wash;
            case Navigator.Answer:
                return answer;
            case Navigator.Colony:
                return colony;
            case Navigator.Share:
                return share;
            case Navigator.Setup:
                return setup;
            case Navigator.Sources:
                return sources;
            default:
                return here;
            }
        }
    }

    MessageSheet {
        id: message

        messages: window.app.messages
    }

    Component {
        id: here
        HerePage {
            app: window.app
        }
    }
    Component {
        id: yards
        YardsPage {
            app: window.app
        }
    }
    Component {
        id: yardEdit
        YardEditPage {
            app: window.app
        }
    }
    Component {
        id: wash
        WashPage {
            app: window.app
        }
    }
    Component {
        id: answer
        AnswerPage {
            app: window.app
        }
    }
    Component {
        id: colony
        ColonyPage {
            app: window.app
        }
    }
    Component {
        id: share
        SharePage {
            app: window.app
        }
    }
    Component {
        id: setup
        SetupPage {
            app: window.app
        }
    }
    Component {
        id: sources
        SourcesPage {
            app: window.app
        }
    }
}
