// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound

import QtQuick
import Halfcup
import Halfcup.Touch

// The colonies of a yard, the most urgent first.
Item {
    id: root

    required property HereController here

    ScrollList {
        anchors.fill: parent
        visible: root.here.colonies.count > 0
        model: root.here.colonies

        header: Column {
            spacing: Look.gap
            bottomPadding: root.here.roundLine !== "" || root.here.trayLine !== "" ? Look.gap : 0

            WhenWanted {
                width: parent.width
                wanted: root.here.trayLine !== ""

                ChoiceRow {
                    objectName: "tray"
                    width: parent.width
                    title: root.here.trayLine
                    detail: qsTr("Open the tray")
                    onClicked: root.here.openTray()
                }
            }

            WhenWanted {
                width: parent.width
                wanted: root.here.roundLine !== ""

                HereRound {
                    objectName: "openRound"
                    width: parent.width
                    here: root.here
                }
            }
        }

        delegate: ColonyRow {
            id: row

            required property int index
            required property string colonyId
            required spoken
            required label
            required headline
            required loadLine
            required dueLine
            required standing
            required isDue

            objectName: "colony-" + row.label
            ruled: row.index < root.here.colonies.count - 1
            onClicked: root.here.openColony(row.colonyId)
        }

        footer: Column {
            topPadding: Look.gap
            spacing: Look.gap

            WhenWanted {
                width: parent.width
                wanted: root.here.roundLine === ""

                HereRound {
                    objectName: "yardRound"
                    width: parent.width
                    ruled: root.here.colonies.count > 1
                    here: root.here
                }
            }

            WhenWanted {
                width: parent.width
                wanted: root.here.colonies.count > 1

                ChoiceRow {
                    objectName: "compare"
                    width: parent.width
                    title: qsTr("Compare the colonies")
                    detail: qsTr("side by side, the highest load first")
                    ruled: false
                    onClicked: root.here.compareColonies()
                }
            }
        }
    }

    WhenWanted {
        anchors.fill: parent
        wanted: root.here.colonies.count === 0

        ScrollColumn {
            anchors.fill: parent

            PlainText {
                width: parent.width
                text: qsTr("No colony is kept in this yard yet.")
            }
        }
    }
}
