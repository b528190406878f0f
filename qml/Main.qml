// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// The window: the page that the navigator names, and over it what the keeper must read first.
Window {
    id: window

    required property App app
    required property Surroundings surroundings

    width: 360
    height: 740
    minimumWidth: 300
    minimumHeight: 480
    visible: true
    title: qsTr("Halfcup")
    color: Look.page

    Shortcut {
        sequences: ["Esc", "Back"]
        onActivated: message.wanted ? window.app.messages.dismiss() : (pages.item as PageBase).goBack()
    }

    // Qt 6.4 cannot load a bound inline component through a Loader, so the pages are loaded as files.
    function fileOf(page: int): string {
        switch (page) {
        case Navigator.Yards:
            return "yards/YardsPage.qml";
        case Navigator.YardEdit:
            return "yards/YardEditPage.qml";
        case Navigator.YardLines:
            return "yards/YardLinesPage.qml";
        case Navigator.YardPlan:
            return "yardplan/YardPlanPage.qml";
        case Navigator.Wash:
            return "wash/WashPage.qml";
        case Navigator.OtherAnswer:
            return "answer/OtherAnswerPage.qml";
        case Navigator.Tray:
            return "tray/TrayPage.qml";
        case Navigator.Methods:
            return "methods/MethodsPage.qml";
        case Navigator.Answer:
            return "answer/AnswerPage.qml";
        case Navigator.Colony:
            return "colony/ColonyPage.qml";
        case Navigator.Event:
            return "event/EventPage.qml";
        case Navigator.OnDay:
            return "onday/OnDayPage.qml";
        case Navigator.FirstStart:
            return "start/FirstStartPage.qml";
        case Navigator.Compare:
            return "compare/ComparePage.qml";
        case Navigator.Season:
            return "season/SeasonPage.qml";
        case Navigator.Treat:
            return "treat/TreatPage.qml";
        case Navigator.Situation:
            return "treat/SituationPage.qml";
        case Navigator.Choice:
            return "treat/ChoicePage.qml";
        case Navigator.Treatment:
            return "treat/TreatmentPage.qml";
        case Navigator.Check:
            return "treat/CheckPage.qml";
        case Navigator.CountBees:
            return "scoops/CountBeesPage.qml";
        case Navigator.OwnScoops:
            return "scoops/OwnScoopsPage.qml";
        case Navigator.Share:
            return "share/SharePage.qml";
        case Navigator.Plan:
            return "plan/PlanPage.qml";
        case Navigator.Folder:
            return "folder/FolderPage.qml";
        case Navigator.Backup:
            return "backup/BackupPage.qml";
        case Navigator.Export:
            return "export/ExportPage.qml";
        case Navigator.Setup:
            return "setup/SetupPage.qml";
        case Navigator.Round:
            return "round/RoundPage.qml";
        case Navigator.ImportTable:
            return "import/ImportPage.qml";
        case Navigator.Same:
            return "same/SamePage.qml";
        case Navigator.History:
            return "history/HistoryPage.qml";
        case Navigator.Sources:
            return "sources/SourcesPage.qml";
        default:
            return "here/HerePage.qml";
        }
    }

    // Clear of a notch and of the system's bars; behind them is the colour of the page. By the window's own size: what
    // it holds has none before it is shown, and all would be laid out twice.
    Item {
        x: window.surroundings.left
        y: window.surroundings.top
        width: window.width - window.surroundings.left - window.surroundings.right
        height: window.height - window.surroundings.top - window.surroundings.bottom

        Loader {
            id: pages

            property bool complete: false
            readonly property int page: window.app.navigator.page

            function show() {
                pages.setSource(Qt.resolvedUrl(window.fileOf(pages.page)), {
                    "app": window.app
                });
            }

            objectName: "pages"
            anchors.fill: parent
            focus: !message.wanted
            visible: !message.wanted
            // The first one once all is there: while this is being made, nothing else can be.
            onPageChanged: pages.complete ? pages.show() : undefined
            Component.onCompleted: {
                pages.complete = true;
                pages.show();
            }
        }

        // Seldom needed, so neither read nor made before there is something to say.
        Loader {
            id: message

            readonly property bool wanted: window.app.messages.text !== ""

            function show() {
                if (message.wanted && !message.item)
                    message.setSource(Qt.resolvedUrl("parts/MessageSheet.qml"), {
                        "messages": window.app.messages
                    });
            }

            anchors.fill: parent
            focus: message.wanted
            visible: message.wanted
            onWantedChanged: message.show()
            Component.onCompleted: message.show()
        }
    }
}
