// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/sample.h"
#include "touch/colony_list_model.h"
#include "touch/services.h"

#include <QObject>
#include <QQmlEngine>
#include <QTimer>

namespace halfcup::touch {

/// The tray: jars scooped and not yet counted, and boards under their colonies. Also what may be written on a
/// jar.
class TrayController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made where the program is put together")
    Q_PROPERTY(QString title READ title NOTIFY changed) // "3 jars wait"
    Q_PROPERTY(bool demo READ isDemo NOTIFY changed)    // one of them is from the demo
    /// Jars in the order of their scoops, then boards; colonyId is the id of the sample, label is what is on
    /// the jar.
    Q_PROPERTY(halfcup::touch::ColonyListModel* jars READ jars CONSTANT)
    Q_PROPERTY(QString mainAction READ mainAction NOTIFY changed) // "Scoop colony 7 next", "Wash jar 4"
    Q_PROPERTY(QString washAction READ washAction NOTIFY changed) // "Wash jar 4" beside scooping; or empty
    Q_PROPERTY(QString proposedLabel READ proposedLabel NOTIFY changed) // for the jar at hand
    Q_PROPERTY(QString problem READ problem NOTIFY changed)             // with its label; else empty
public:
    TrayController(Services& services, QObject* parent = nullptr);

    QString title() const;
    bool isDemo() const { return m_demo; }
    ColonyListModel* jars() { return &m_jars; }
    QString mainAction() const;
    QString washAction() const;
    QString proposedLabel() const { return m_proposedLabel; }
    QString problem() const { return m_problem; }

    /// Reads the store; the yard is the one at hand, where the next colony is scooped.
    void show(const QString& yardId);
    /// While true the minutes go on, once a minute.
    void setShown(bool shown);

    Q_INVOKABLE void act();      // the main action
    Q_INVOKABLE void washNext(); // the jar that was scooped first
    Q_INVOKABLE void open(const QString& sampleId);

    /// Proposes a label for the jar of that draft.
    Q_INVOKABLE void askLabel(const QString& sampleId);
    /// True where the label may be written on that jar; else problem() says why not.
    Q_INVOKABLE bool check(const QString& label);
    Q_INVOKABLE void clearProblem();

signals:
    void changed();
    void draftWanted(const QString& sampleId);
    void washWanted(const QString& colonyId);
    void backWanted();

private:
    void read();
    QString placeOf(const records::Sample& sample) const;
    QString waitedLine(const records::Sample& sample) const;
    ColonyListModel::Entry entryOf(const records::Sample& sample) const;

    Services& m_services;
    QString m_yardId;
    ColonyListModel m_jars;
    int m_jarCount = 0;
    QString m_firstId, m_firstJar; // scooped first
    QString m_nextColonyId, m_nextColonyLabel;
    bool m_demo = false;
    QString m_labelFor; // the sample whose jar is asked about
    QString m_proposedLabel;
    QString m_problem;
    QTimer m_timer;
};

/// "3 jars wait", "2 jars and 1 board wait"; empty where the tray is.
[[nodiscard]] QString trayLine(const std::vector<records::Sample>& drafts);

} // namespace halfcup::touch
