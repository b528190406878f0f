// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "season/treatment_check.h"
#include "touch/choice_list_model.h"
#include "touch/picture_legend.h"
#include "touch/services.h"
#include "touch/slopes_item.h"

#include <QObject>
#include <QQmlEngine>

namespace halfcup::touch {

/// Did it work? What the washes before and after a treatment say.
class CheckController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made where the program is put together")
    Q_PROPERTY(QString context READ context NOTIFY changed) // product, yard
    Q_PROPERTY(bool demo READ isDemo NOTIFY changed)
    Q_PROPERTY(QString headline READ headline NOTIFY changed)              // the outcome in a word or two
    Q_PROPERTY(QString reading READ reading NOTIFY changed)                // and in a sentence
    Q_PROPERTY(QString next READ next NOTIFY changed)                      // what follows
    Q_PROPERTY(QStringList notes READ notes NOTIFY changed)                // cautions
    Q_PROPERTY(halfcup::touch::ChoiceListModel* facts READ facts CONSTANT) // title and detail
    Q_PROPERTY(bool hasPicture READ hasPicture NOTIFY changed) // false: no colony was washed before and after
    Q_PROPERTY(halfcup::touch::SlopesPicture picture READ picture NOTIFY changed)
    Q_PROPERTY(halfcup::touch::PictureLegend legend READ legend NOTIFY changed)
    Q_PROPERTY(QString pictureSpoken READ pictureSpoken NOTIFY changed)
    Q_PROPERTY(QString mainAction READ mainAction NOTIFY changed) // "Wash colony 4", or "Done"
public:
    CheckController(Services& services, QObject* parent = nullptr);

    QString context() const { return m_context; }
    bool isDemo() const { return m_entry.treatment.demo; }
    QString headline() const;
    QString reading() const { return m_services.say(m_check.reading); }
    QString next() const { return m_services.say(m_check.next); }
    QStringList notes() const;
    ChoiceListModel* facts() { return &m_facts; }
    bool hasPicture() const { return !m_picture.shown.colonies.empty(); }
    SlopesPicture picture() const { return m_picture; }
    PictureLegend legend() const;
    QString pictureSpoken() const;
    QString mainAction() const;

    /// False where there is no such treatment.
    bool show(const QString& treatmentId);
    [[nodiscard]] const season::TreatmentCheck& found() const { return m_check; }

    Q_INVOKABLE void act(); // washes the next colony that wants it, or goes back
    Q_INVOKABLE void openSource();

signals:
    void changed();
    void washWanted(const QString& colonyId, const QString& yardId);
    void backWanted();
    void sourceWanted(const QString& topic);

private:
    void readColonies();
    void readPicture(const std::optional<records::Yard>& yard);
    void listFacts();

    Services& m_services;
    records::GivenTreatment m_entry;
    std::vector<season::ColonyWashes> m_colonies;
    season::TreatmentCheck m_check;
    SlopesPicture m_picture;
    QString m_context;
    QString m_nextColonyId, m_nextColonyLabel,
        m_nextYardId; // treated, and not washed since; empty: none, or too early
    ChoiceListModel m_facts;
};

/// All washes of the colonies of the treatment's yard, each with whether it was treated: what
/// checkTreatment() wants. Colonies that were put together or stand elsewhere now are left out, unless they
/// were treated.
[[nodiscard]] std::vector<season::ColonyWashes> washesFor(const records::GivenTreatment& entry,
                                                          store::Store& store);

} // namespace halfcup::touch
