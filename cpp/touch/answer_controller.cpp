// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/answer_controller.h"

#include "mites/wash_load.h"
#include "records/judgement.h"
#include "records/method.h"
#include "touch/colony_entries.h"
#include "touch/round_records.h"
#include "touch/words.h"

#include <QLocale>

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace halfcup::touch {

namespace {

/// "9 in half a cup": a line as a count in the keeper's own scoop, the way the trade says it.
QString asCount(double line, double bees) {
    return QLocale().toString(line * bees / 100, 'f', 0);
}

} // namespace

AnswerController::AnswerController(Services& services, QObject* parent)
    : QObject(parent)
    , m_services(services) {}

bool AnswerController::show(const QString& sampleId) {
    std::optional<records::Sample> kept;
    m_services.kept([&] { kept = m_services.store.sample(sampleId.toStdString()); });
    if (!kept || !kept->answer)
        return false;
    m_sample = *kept;
    m_answer = *kept->answer;
    m_services.kept([&] {
        const auto colony = m_services.store.colony(m_sample.colonyId);
        m_colonyLabel = colony ? QString::fromStdString(colony->label) : QString();
        const auto yard = m_services.store.yard(m_sample.yardId);
        m_yard = yard.value_or(records::Yard{});
        readNextJar();
        m_nextColonyId.clear();
        for (const ColonyListModel::Entry& entry :
             yard ? colonyEntries(m_services, *yard) : QList<ColonyListModel::Entry>())
            if (entry.isDue && entry.colonyId.toStdString() != m_sample.colonyId) {
                m_nextColonyId = entry.colonyId;
                m_nextColonyLabel = entry.label;
                break;
            }
        readRound();
    });
    m_standing = words::headlineOf(m_sample);
    listDetails();
    emit changed();
    return true;
}

/// Where a round of the yard is open, its next colony comes before the most urgent one.
void AnswerController::readRound() {
    m_roundIsDone = false;
    const auto round = openRound(m_services, m_yard.id);
    if (!round)
        return;
    const season::RoundReading reading = readKept(m_services, *round).reading;
    const auto next = reading.next();
    m_roundIsDone = reading.count(season::RoundPlace::Left) == 0;
    if (const auto colony = next ? m_services.store.colony(*next) : std::nullopt) {
        m_nextColonyId = QString::fromStdString(colony->id);
        m_nextColonyLabel = QString::fromStdString(colony->label);
    }
}

/// On the tailgate one jar follows the other: the one that was scooped first.
void AnswerController::readNextJar() {
    m_nextJarId.clear();
    if (m_sample.jar.empty())
        return;
    std::int64_t first = 0;
    for (const records::Sample& draft : m_services.store.drafts()) {
        const std::int64_t scooped = draft.scoopedAtMs.value_or(draft.startedAtMs);
        if (draft.jar.empty() || !records::isInTray(draft) || (!m_nextJarId.isEmpty() && scooped >= first))
            continue;
        first = scooped;
        m_nextJarId = QString::fromStdString(draft.id);
        m_nextJar = QString::fromStdString(draft.jar);
    }
}

/// The line the headline speaks of: the keeper's own where that is the graver one.
bool AnswerController::headlineIsOwnLine() const {
    return records::graverStanding(m_sample) != records::standingAgainstTreatLine(m_sample);
}

QString AnswerController::context() const {
    return tr("Colony %1, %2 · %3 in %4", "colony, yard, mites, scoop")
        .arg(m_colonyLabel, QString::fromStdString(m_yard.name), words::mites(m_answer.mites),
             words::measure(m_sample.scoop.volumeMl));
}

QString AnswerController::headline() const {
    return words::standing(static_cast<StandingWord::Value>(m_standing));
}

QString AnswerController::sentence() const {
    if (m_answer.mites == 0)
        return tr("None found. The load can still be anything from %1 mites on every 100 bees.")
            .arg(words::loadRange(m_answer));
    return tr("About %1 mites on every 100 bees. It could be anything from %2.")
        .arg(words::load(m_answer.loadQ50), words::loadRange(m_answer));
}

QString AnswerController::zeroLine() const {
    if (m_answer.mites != 0)
        return {};
    // The chance of finding none in this jar at a true load of 1 per 100, from the same model as the range.
    const double bees = m_sample.scoop.beesMean * m_answer.recovery / 100;
    const double none = std::pow(1 + bees / m_answer.jarShape, -m_answer.jarShape);
    return tr("None found is not none there: at a true load of 1 in 100, about %1 of 100 such jars hold no "
              "mite. "
              "While there is brood, most mites sit under cappings.")
        .arg(QLocale().toString(100 * none, 'f', 0));
}

QString AnswerController::lineText() const {
    const double line = headlineIsOwnLine() ? *m_answer.lines.own : m_answer.lines.treat;
    const QString count = asCount(line, m_sample.scoop.beesMean);
    const QString scoop = words::measure(m_sample.scoop.volumeMl);
    return headlineIsOwnLine() ? tr("Your own line is %1, or %2 in %3.").arg(words::line(line), count, scoop)
                               : tr("Your line is %1, or %2 in %3.").arg(words::line(line), count, scoop);
}

QString AnswerController::chanceLine() const {
    const bool own = headlineIsOwnLine();
    return tr("Chance that the true load is over %1: %2")
        .arg(words::line(own ? *m_answer.lines.own : m_answer.lines.treat),
             words::chance(own ? *m_answer.chanceOverOwn : m_answer.chanceOver));
}

QString AnswerController::ownLine() const {
    if (!m_answer.lines.own || !m_answer.chanceOverOwn)
        return {};
    const bool own = headlineIsOwnLine();
    const auto other =
        own ? records::standingAgainstTreatLine(m_sample) : records::standingAgainstOwnLine(m_sample);
    if (!other)
        return {};
    const QString standing = words::standing(StandingWord::from(*other));
    return own ? tr("Treat line %1: %2 (%3)", "line, standing, chance")
                     .arg(words::line(m_answer.lines.treat), standing, words::chance(m_answer.chanceOver))
               : tr("Own line %1: %2 (%3)", "line, standing, chance")
                     .arg(words::line(*m_answer.lines.own), standing, words::chance(*m_answer.chanceOverOwn));
}

QString AnswerController::placeLine() const {
    const QString time = words::timeOfDay(sampledAt(m_sample));
    const QString day = words::day(records::localDate(sampledAt(m_sample)));
    const records::PositionStamp& stamp = m_sample.stamp;
    if (stamp.state != records::PositionState::Stamped)
        return tr("Scooped on %1 at %2, no position").arg(day, time);
    if (m_yard.position) {
        const double away = place::distanceM(stamp.position.latitudeDeg, stamp.position.longitudeDeg,
                                             m_yard.position->latitudeDeg, m_yard.position->longitudeDeg);
        if (away > m_yard.reachM + stamp.position.accuracyM.value_or(0))
            return tr("Scooped on %1 at %2, %3 from %4. Is this the right colony?")
                .arg(day, time, m_services.distance(away), QString::fromStdString(m_yard.name));
    }
    return tr("Scooped on %1 at %2, within %3")
        .arg(day, time, m_services.distance(stamp.position.accuracyM.value_or(0)));
}

QString AnswerController::nextLine() const {
    switch (static_cast<StandingWord::Value>(m_standing)) {
    case StandingWord::Over:
        return tr("Time to treat. Which substance fits depends on the weather, supers and brood: the "
                  "product's label "
                  "and your local law decide. Ask your bee inspector or vet where you are unsure.");
    case StandingWord::Close:
        return tr("Wash again within two weeks, or treat if the season leaves no time to wait.");
    case StandingWord::CannotTell:
        return tr("Too few bees to say. Wash half a cup again within a week.");
    case StandingWord::Under:
        return tr("Nothing to do now. Wash again in a month.");
    case StandingWord::Unknown:
        break;
    }
    return {};
}

bool AnswerController::wantsTreating() const {
    return m_standing == StandingWord::Over || m_standing == StandingWord::Close;
}

void AnswerController::listDetails() {
    QList<ChoiceListModel::Entry> entries;
    const auto add = [&](const QString& title, const QString& detail) {
        ChoiceListModel::Entry entry;
        entry.title = title;
        entry.detail = detail;
        entries.append(entry);
    };
    add(tr("Bees in the jar"), tr("about %1 (%2)")
                                   .arg(QLocale().toString(m_sample.scoop.beesMean, 'f', 0),
                                        words::measure(m_sample.scoop.volumeMl)));
    add(tr("90 % range"), tr("%1 mites per 100 bees").arg(words::loadRange(m_answer)));
    if (m_answer.mitesSecondRinse)
        add(tr("Second rinse"), tr("%1 more", "mites").arg(words::mites(*m_answer.mitesSecondRinse)));
    const records::Method* known = records::findMethod(m_sample.method);
    const records::Method& method = known ? *known : records::alcoholWash();
    if (m_answer.recovery < 1) { // not what a line is set on: how it was made one
        const double counted = 100.0 * static_cast<double>(m_answer.mites) / m_sample.scoop.beesMean;
        add(tr("As counted"), tr("%1 on %2: %3 per 100, before recovery")
                                  .arg(words::mites(m_answer.mites), words::bees(m_sample.scoop.beesMean),
                                       QLocale().toString(counted, 'f', 1)));
        add(tr("Recovery"), tr("finds about %1 % of what a wash finds, give or take %2")
                                .arg(QLocale().toString(100 * m_answer.recovery, 'f', 0),
                                     QLocale().toString(100 * m_answer.recoverySd, 'f', 0)));
    }
    mites::Wash full;
    full.mites = m_answer.mites;
    full.beesMean = m_sample.scoop.beesMean;
    full.beesCv = m_sample.scoop.beesCv;
    full.recovery = method.fullRecovery;
    full.recoverySd = method.fullRecoverySd;
    full.jarShape = m_answer.jarShape;
    m_services.kept([&] { // throws where a record from elsewhere holds figures no wash can have
        const mites::LoadEstimate estimate = mites::LoadPosterior(full).estimate();
        add(m_answer.recovery < 1 ? tr("With all mites it misses") : tr("With the mites a wash misses"),
            tr("%1 per 100 (%2 to %3)")
                .arg(words::load(estimate.q50), words::load(m_answer.mites == 0 ? 0 : estimate.q05),
                     words::load(estimate.q95)));
    });
    add(tr("Method"), words::method(QString::fromStdString(m_sample.method)));
    const int shaken = static_cast<int>(m_sample.shake.shakenBeforeMs / 1000);
    if (shaken > 0 || m_sample.shake.ended) // a wash out of a table does not say
        add(tr("Shaken"), m_sample.shake.interrupted
                              ? tr("about %1, the phone's clocks disagreed").arg(words::seconds(shaken))
                              : words::seconds(shaken));
    add(tr("What this leaves out"),
        tr("One jar from one frame on one day; the mites under cappings; mites carried in later."));
    m_details.setEntries(entries);
}

QString AnswerController::note() const {
    return QString::fromStdString(m_sample.note);
}

void AnswerController::setNote(const QString& note) {
    const std::string text = note.trimmed().left(2000).toStdString();
    if (text == m_sample.note)
        return;
    records::Sample changed = m_sample;
    changed.note = text;
    if (m_services.kept([&] { m_services.store.save(changed); }))
        m_sample = changed;
    emit this->changed();
}

QString AnswerController::mainAction() const {
    if (!m_nextJarId.isEmpty())
        return tr("Wash jar %1 next").arg(m_nextJar);
    if (m_roundIsDone)
        return tr("The yard's answer");
    if (m_nextColonyId.isEmpty())
        return tr("Done");
    return m_answer.recovery < 1 ? words::begin(m_sample.method, m_nextColonyLabel)
                                 : tr("Wash colony %1 next").arg(m_nextColonyLabel);
}

void AnswerController::act() {
    if (!m_nextJarId.isEmpty())
        emit jarWanted(m_nextJarId);
    else if (m_roundIsDone)
        emit roundWanted(QString::fromStdString(m_yard.id));
    else if (m_nextColonyId.isEmpty())
        emit homeWanted();
    else
        emit washWanted(m_nextColonyId);
}

void AnswerController::openColony() {
    emit colonyWanted(QString::fromStdString(m_sample.colonyId));
}

void AnswerController::countBees() {
    emit countWanted(QString::fromStdString(m_sample.id));
}

void AnswerController::openTreat() {
    emit treatWanted(QString::fromStdString(m_sample.colonyId));
}

void AnswerController::openSources() {
    emit sourcesWanted();
}

} // namespace halfcup::touch
