// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "touch/choice_list_model.h"
#include "touch/treat_scope.h"

#include <QObject>
#include <QQmlEngine>

namespace halfcup::touch {

/// What to treat with: every substance and measure for one colony or a whole yard, each with its verdict.
class TreatController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made where the program is put together")
    Q_PROPERTY(QString context READ context NOTIFY changed) // "Colony 4, Alder Bend"
    Q_PROPERTY(bool demo READ isDemo NOTIFY changed)
    Q_PROPERTY(QString line READ line NOTIFY changed)       // what the situation is taken to be
    Q_PROPERTY(QString problem READ problem NOTIFY changed) // why there is no list; else empty
    Q_PROPERTY(bool hasForecast READ hasForecast NOTIFY changed)
    Q_PROPERTY(bool canWiden READ canWiden NOTIFY changed) // one colony is shown: the whole yard could be
    // title: name; detail: the gravest reason; standing: VerdictMark::Value; note: the same in words;
    // section: heading over the first of each verdict
    Q_PROPERTY(halfcup::touch::ChoiceListModel* choices READ choices CONSTANT)
public:
    TreatController(Services& services, QObject* parent = nullptr);

    QString context() const { return m_context; }
    bool isDemo() const { return m_scope && m_scope->demo(); }
    QString line() const { return m_line; }
    QString problem() const { return m_problem; }
    bool hasForecast() const { return m_scope && !m_scope->highsC.empty(); }
    bool canWiden() const { return m_scope && !m_scope->wholeYard; }
    ChoiceListModel* choices() { return &m_choices; }

    /// One colony, or the whole yard where colonyId is empty; from today. A forecast typed for the same yard
    /// today is kept. False, and a problem, where nothing lives there.
    bool show(const QString& yardId, const QString& colonyId);
    /// The same bees on another day and with another forecast.
    void showFrom(const records::Date& from, std::vector<double> highsC, std::vector<double> lowsC);
    /// Reads the records again.
    void refresh();

    [[nodiscard]] const std::optional<TreatScope>& scope() const { return m_scope; }
    [[nodiscard]] const season::Choice* choice(const QString& id) const;

    Q_INVOKABLE void openChoice(const QString& id);
    Q_INVOKABLE void openSituation();
    Q_INVOKABLE void widen(); // from one colony to the whole yard

signals:
    void changed();
    void choiceWanted(const QString& id);
    void anotherWanted(); // a substance that the handbook does not know
    void situationWanted();

private:
    void list();

    Services& m_services;
    std::optional<TreatScope> m_scope;
    records::Date m_typedOn; // the day on which the forecast was typed
    std::vector<season::Choice> m_found;
    QString m_context;
    QString m_line;
    QString m_problem;
    ChoiceListModel m_choices;
};

} // namespace halfcup::touch
