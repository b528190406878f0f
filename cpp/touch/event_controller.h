// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "touch/choice_list_model.h"
#include "touch/event_keeping.h"
#include "touch/services.h"

#include <QObject>
#include <QQmlEngine>

namespace halfcup::touch {

/// The page on which the keeper tells what happened to a colony, or to all of a yard at once; and the one
/// event that was told, to change its note or to take it back.
class EventController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made where the program is put together")
    Q_PROPERTY(View view READ view NOTIFY changed)
    Q_PROPERTY(QString context READ context NOTIFY changed) // "Colony 4, Alder Bend"
    Q_PROPERTY(QString title READ title NOTIFY changed)     // "What happened?", "Supers on"
    Q_PROPERTY(bool demo READ isDemo NOTIFY changed)
    Q_PROPERTY(QString likely READ likely NOTIFY changed)       // what happened most likely: the main action
    Q_PROPERTY(QString likelyKey READ likelyKey NOTIFY changed) // its key
    Q_PROPERTY(halfcup::touch::ChoiceListModel* kinds READ kinds CONSTANT) // all others
    Q_PROPERTY(QString asks READ asks NOTIFY changed) // over the choices, "What did you see?"; else empty
    Q_PROPERTY(halfcup::touch::ChoiceListModel* choices READ choices CONSTANT)
    Q_PROPERTY(QString fieldLabel READ fieldLabel NOTIFY changed) // of what is typed; empty: nothing is
    Q_PROPERTY(QString fieldHint READ fieldHint NOTIFY changed)
    Q_PROPERTY(QString fieldText READ fieldText NOTIFY changed)
    Q_PROPERTY(bool steps READ hasSteps NOTIFY changed)     // what is typed is a number with - and +
    Q_PROPERTY(QString dayLine READ dayLine NOTIFY changed) // "Today, 18 May 2026"
    Q_PROPERTY(bool canGoLater READ canGoLater NOTIFY changed)
    Q_PROPERTY(bool hasNote READ hasNote NOTIFY changed)
    Q_PROPERTY(QString note READ note NOTIFY changed)
    Q_PROPERTY(QString problem READ problem NOTIFY changed)
    Q_PROPERTY(QString question READ question NOTIFY changed) // to be answered before it is kept; else empty
public:
    enum View {
        Picking, // what happened?
        Telling, // when, and what exactly
        Kept,    // an event of the records
    };
    Q_ENUM(View)

    EventController(Services& services, QObject* parent = nullptr);

    View view() const { return m_view; }
    QString context() const;
    QString title() const;
    bool isDemo() const { return m_yard.demo; }
    QString likely() const;
    QString likelyKey() const { return m_likely; }
    ChoiceListModel* kinds() { return &m_kinds; }
    QString asks() const;
    ChoiceListModel* choices() { return &m_choices; }
    QString fieldLabel() const;
    QString fieldHint() const;
    QString fieldText() const { return m_typed; }
    bool hasSteps() const { return m_event.kind == records::EventKind::Strength; }
    QString dayLine() const;
    bool canGoLater() const { return m_event.day < m_services.today(); }
    bool hasNote() const { return m_event.kind != records::EventKind::Requeened; } // its words are the stock
    QString note() const { return m_note; }
    QString problem() const { return m_problem; }
    QString question() const { return m_question; }

    bool startFor(const QString& colonyId);
    bool startForYard(const QString& yardId, records::EventKind kind); // supers on or off
    bool open(const QString& eventId);

    Q_INVOKABLE void pick(const QString& kindKey);
    Q_INVOKABLE void choose(const QString& key);
    Q_INVOKABLE void type(const QString& text) { m_typed = text; } // kept while the page changes
    Q_INVOKABLE void typeNote(const QString& text) { m_note = text; }
    Q_INVOKABLE void more();
    Q_INVOKABLE void fewer();
    Q_INVOKABLE void earlier();
    Q_INVOKABLE void later();
    Q_INVOKABLE bool typeDay(const QString& text);
    /// Keeps it and leaves; else there is a problem, or a question that was not asked before.
    Q_INVOKABLE bool keep(const QString& typed, const QString& note);
    Q_INVOKABLE bool keepAnyway();
    Q_INVOKABLE bool takeBack();
    Q_INVOKABLE bool back(); // to the kinds; false where there is nothing to go back to

signals:
    void changed();
    void left(); // it was kept or taken back

private:
    bool fail(const QString& problem);
    bool begin(const records::RecordId& yardId, std::vector<records::Colony> colonies);
    void listKinds();
    void listChoices();
    void step(double by);
    void setDay(const records::Date& day);
    QString fill(); // what was typed into the event; a problem where it cannot be
    bool check();
    bool write();

    Services& m_services;
    View m_view = Picking;
    records::Yard m_yard;
    std::vector<records::Colony> m_colonies; // one, or all that live in the yard
    bool m_wholeYard = false;
    records::ColonyEvent m_event; // what is being told, for any of them
    EventsToKeep m_wanted;        // checked, not yet written
    QString m_likely;
    ChoiceListModel m_kinds;
    ChoiceListModel m_choices;
    QString m_typed;
    QString m_note;
    QString m_problem;
    QString m_question;
};

} // namespace halfcup::touch
