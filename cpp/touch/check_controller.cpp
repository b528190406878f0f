// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/check_controller.h"

#include "season/due.h"
#include "season/lines.h"
#include "touch/treat_scope.h"
#include "touch/words.h"

#include <QLocale>

#include <algorithm>
#include <cmath>

namespace halfcup::touch {

namespace {

using records::GivenTreatment;

/// From the oldest wash that may count before it to the latest one that may count after it.
bool treatedMeanwhile(const std::vector<GivenTreatment>& given, const records::Treatment& treatment) {
    const records::Date from = records::plusDays(treatment.firstDay, -season::daysBefore);
    const records::Date to = records::plusDays(records::endOf(treatment), season::lastDayAfter);
    return std::ranges::any_of(given, [&](const GivenTreatment& other) {
        return other.treatment.id != treatment.id && !other.treatment.removed &&
               other.treatment.firstDay <= to && records::endOf(other.treatment) >= from;
    });
}

QString percent(double fraction) {
    return CheckController::tr("%1 %").arg(QLocale().toString(std::round(fraction * 100), 'f', 0));
}

} // namespace

std::vector<season::ColonyWashes> washesFor(const GivenTreatment& entry, store::Store& store) {
    std::vector<records::RecordId> ids = entry.colonyIds;
    for (const records::Colony& colony : store.colonies(entry.treatment.yardId))
        if (std::ranges::find(ids, colony.id) == ids.end())
            ids.push_back(colony.id);
    std::vector<season::ColonyWashes> all;
    for (std::size_t i = 0; i < ids.size(); ++i) {
        season::ColonyWashes colony;
        colony.colonyId = ids[i];
        colony.treated = i < entry.colonyIds.size();
        colony.treatedOtherwise = treatedMeanwhile(store.treatmentsOf(ids[i]), entry.treatment);
        colony.washes = store.samplesOf(ids[i]);
        all.push_back(std::move(colony));
    }
    return all;
}

CheckController::CheckController(Services& services, QObject* parent)
    : QObject(parent)
    , m_services(services) {}

QString CheckController::headline() const {
    switch (m_check.outcome) {
    case season::Outcome::NotYet:
        return tr("Not known yet");
    case season::Outcome::CannotTell:
        return tr("Can't tell");
    case season::Outcome::Worked:
        return tr("It worked");
    case season::Outcome::NotReached:
        return tr("It did not reach the mark");
    case season::Outcome::Resistance:
        return tr("It points to resistance");
    case season::Outcome::CarriedIn:
        return tr("Mites were carried in");
    }
    return {};
}

QStringList CheckController::notes() const {
    QStringList sentences;
    for (const season::Phrase& note : m_check.notes)
        sentences.append(m_services.say(note));
    return sentences;
}

QString CheckController::mainAction() const {
    return m_nextColonyId.isEmpty() ? tr("Done") : tr("Wash colony %1").arg(m_nextColonyLabel);
}

bool CheckController::show(const QString& treatmentId) {
    std::optional<GivenTreatment> entry;
    m_services.kept([&] { entry = m_services.store.treatment(treatmentId.toStdString()); });
    if (!entry)
        return false;
    m_entry = *entry;
    m_services.kept([&] {
        const auto yard = m_services.store.yard(m_entry.treatment.yardId);
        m_context = tr("%1, %2", "product, yard")
                        .arg(QString::fromStdString(m_entry.treatment.product),
                             yard ? QString::fromStdString(yard->name) : QString());
        m_colonies = washesFor(m_entry, m_services.store);
        m_check =
            season::checkTreatment(m_entry.treatment, m_colonies, m_services.today(), m_services.handbook());
        readColonies();
        readPicture(yard);
    });
    listFacts();
    emit changed();
    return true;
}

PictureLegend CheckController::legend() const {
    return {pictures::legendOf(m_picture.shown)};
}

QString CheckController::pictureSpoken() const {
    return pictures::sentenceOf(m_picture.shown);
}

/// Throws store::StoreError, as what it is called among.
void CheckController::readPicture(const std::optional<records::Yard>& yard) {
    pictures::Slopes& slopes = m_picture.shown;
    slopes = {};
    if (yard) // the line of the day before which it was wanted
        slopes.treatLine = season::linesOn(*yard, m_entry.treatment.firstDay, m_services.handbook()).treat;
    const auto endOf = [](const records::Sample& wash) {
        return pictures::SlopeEnd{wash.answer->loadQ05, wash.answer->loadQ50, wash.answer->loadQ95,
                                  wash.answer->mites == 0};
    };
    for (const season::HeldWashes& held : season::washesHeld(m_entry.treatment, m_colonies))
        if (const auto colony = m_services.store.colony(held.colonyId))
            slopes.colonies.push_back(
                {QString::fromStdString(colony->label), endOf(held.before), endOf(held.after), held.treated});
}

/// The next treated colony that has not been washed since the first day that counts.
void CheckController::readColonies() {
    m_nextColonyId.clear();
    const records::Date today = m_services.today();
    if (today < m_check.washFrom ||
        records::daysBetween(records::endOf(m_entry.treatment), today) > season::lastDayAfter)
        return;
    for (const season::ColonyWashes& colony : m_colonies) {
        const bool washed = std::ranges::any_of(colony.washes, [&](const records::Sample& sample) {
            const auto last = season::lastWashOf(sample);
            return last && last->washedOn >= m_check.washFrom;
        });
        const auto kept = m_services.store.colony(colony.colonyId);
        if (!colony.treated || washed || !kept || kept->removed)
            continue;
        m_nextColonyId = QString::fromStdString(kept->id);
        m_nextColonyLabel = QString::fromStdString(kept->label);
        m_nextYardId = QString::fromStdString(kept->yardId);
        return;
    }
}

void CheckController::listFacts() {
    QList<ChoiceListModel::Entry> entries;
    const auto add = [&](const QString& title, const QString& detail, const QString& note = {}) {
        ChoiceListModel::Entry entry;
        entry.title = title;
        entry.detail = detail;
        entry.note = note;
        entries.append(entry);
    };
    if (m_check.outcome == season::Outcome::NotYet) {
        add(tr("Wash from"), words::dayAndYear(m_check.washFrom), tr("10 days after its end"));
        add(tr("Best on"), words::dayAndYear(m_check.washBest), tr("one brood cycle after its end"));
    }
    if (m_check.efficacyQ50) {
        add(tr("Killed"), tr("about %1, in 9 of 10 cases %2 to %3")
                              .arg(percent(*m_check.efficacyQ50), percent(*m_check.efficacyQ05),
                                   percent(*m_check.efficacyQ95)));
        add(tr("Chance that it reached the mark"), words::chance(m_check.chanceOverMark));
    }
    add(tr("The mark"), percent(m_check.mark), sourceLine(m_services.handbook(), m_check.markEntry));
    add(tr("Treated colonies washed before and after"), QLocale().toString(m_check.colonies));
    add(tr("Untreated ones to compare with"), QLocale().toString(m_check.controls));
    m_facts.setEntries(entries);
}

void CheckController::act() {
    if (m_nextColonyId.isEmpty())
        emit backWanted();
    else
        emit washWanted(m_nextColonyId, m_nextYardId);
}

void CheckController::openSource() {
    emit sourceWanted(QStringLiteral("efficacy"));
}

} // namespace halfcup::touch
