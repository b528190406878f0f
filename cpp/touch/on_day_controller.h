// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/on_day.h"
#include "touch/choice_list_model.h"
#include "touch/services.h"

#include <QObject>
#include <QQmlEngine>

namespace halfcup::touch {

/// What was so on a day, for one colony or for all that stood in a yard: the answer to an inspector. What it
/// says is told by records::onDay; here it is put into words.
class OnDayController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made where the program is put together")
    Q_PROPERTY(QString context READ context NOTIFY changed) // "Alder Bend"
    Q_PROPERTY(QString title READ title NOTIFY changed)     // "Colony 4", "All colonies"
    Q_PROPERTY(QString dayLine READ dayLine NOTIFY changed) // "On 1 July 2026"
    Q_PROPERTY(bool demo READ isDemo NOTIFY changed)
    Q_PROPERTY(bool canGoLater READ canGoLater NOTIFY changed)
    Q_PROPERTY(halfcup::touch::ChoiceListModel* facts READ facts CONSTANT)       // to read
    Q_PROPERTY(halfcup::touch::ChoiceListModel* colonies READ colonies CONSTANT) // of a yard: to open
    Q_PROPERTY(QString problem READ problem NOTIFY changed)
public:
    OnDayController(Services& services, QObject* parent = nullptr);

    QString context() const;
    QString title() const;
    QString dayLine() const;
    bool isDemo() const { return m_demo; }
    bool canGoLater() const { return m_day < m_services.today(); }
    ChoiceListModel* facts() { return &m_facts; }
    ChoiceListModel* colonies() { return &m_colonies; }
    QString problem() const { return m_problem; }

    bool showColony(const QString& colonyId); // today at first
    bool showYard(const QString& yardId);

    Q_INVOKABLE void earlier();
    Q_INVOKABLE void later();
    Q_INVOKABLE bool typeDay(const QString& text);
    Q_INVOKABLE void openColony(const QString& colonyId); // the same day, one colony
    Q_INVOKABLE bool back(); // from one colony to its yard's list; false where it did not come from there

signals:
    void changed();

private:
    void read();
    void readColony(const records::Colony& colony);
    void readYard();
    void fact(const QString& title, const QString& detail, const QString& note = {});
    void addTreatment(const QString& title, const records::Treatment& treatment);

    Services& m_services;
    records::Date m_day;
    QString m_yardId;
    QString m_colonyId; // empty: the whole yard
    bool m_cameFromYard = false;
    QString m_yardName;
    QString m_label;
    bool m_demo = false;
    QList<ChoiceListModel::Entry> m_rows;
    ChoiceListModel m_facts;
    ChoiceListModel m_colonies;
    QString m_problem;
};

} // namespace halfcup::touch
