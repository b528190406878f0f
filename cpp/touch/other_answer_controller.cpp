// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/other_answer_controller.h"

#include "mites/standing.h"
#include "records/method.h"
#include "season/board_reading.h"
#include "touch/colony_entries.h"
#include "touch/standing_word.h"
#include "touch/words.h"

#include <QCoreApplication>
#include <QLocale>

#include <stdexcept>

namespace halfcup::touch {

namespace {

class OtherAnswerWords {
    Q_DECLARE_TR_FUNCTIONS(OtherAnswerWords)
};

constexpr double wholeDaysHours =
    20;                            // below that the fall of a day is guessed from a part of it [own choice]
constexpr double enoughBees = 300; // the rule for few bees does not bear on boards and brood

bool countsCells(const records::Sample& sample) {
    const records::Method* method = records::findMethod(sample.method);
    return method && method->measure == records::Measure::InfestedCells;
}

} // namespace

QString otherFigure(const records::Sample& sample, double figure) {
    return countsCells(sample) ? OtherAnswerWords::tr("%1 of 100 drone cells").arg(words::load(figure))
                               : OtherAnswerWords::tr("%1 mites a day").arg(words::load(figure));
}

QString otherRange(const records::OtherAnswer& answer) {
    return OtherAnswerWords::tr("%1 to %2", "a range")
        .arg(words::load(answer.count == 0 ? 0 : answer.q05), words::load(answer.q95));
}

OtherAnswerController::OtherAnswerController(Services& services, QObject* parent)
    : QObject(parent)
    , m_services(services) {}

bool OtherAnswerController::show(const QString& sampleId) {
    std::optional<records::Sample> kept;
    m_services.kept([&] { kept = m_services.store.sample(sampleId.toStdString()); });
    if (!kept || !kept->otherAnswer)
        return false;
    m_sample = *kept;
    m_answer = *kept->otherAnswer;
    m_services.kept([&] {
        const auto colony = m_services.store.colony(m_sample.colonyId).value_or(records::Colony{});
        const auto yard = m_services.store.yard(m_sample.yardId).value_or(records::Yard{});
        m_colonyLabel = QString::fromStdString(colony.label);
        m_yardName = QString::fromStdString(yard.name);
        const season::BoardContext context =
            season::boardContext(yard, colony, m_services.store.eventsOf(m_sample.colonyId),
                                 records::localDate(sampledAt(m_sample)));
        m_month = context.month;
        m_noLoad = season::noLoadBecause(context);
    });
    listFacts();
    emit changed();
    return true;
}

bool OtherAnswerController::isBoard() const {
    return !countsCells(m_sample);
}

QString OtherAnswerController::context() const {
    return tr("Colony %1, %2 · %3", "colony, yard, method")
        .arg(m_colonyLabel, m_yardName, words::method(QString::fromStdString(m_sample.method)));
}

int OtherAnswerController::standing() const {
    if (!m_answer.line)
        return StandingWord::Unknown;
    try {
        return StandingWord::from(mites::standing(m_answer.q50, m_answer.chanceOver, m_answer.q05,
                                                  m_answer.q95, *m_answer.line, enoughBees));
    } catch (const std::domain_error&) {
        return StandingWord::Unknown; // figures no count can have: kept, but nothing is said of them
    }
}

QString OtherAnswerController::headline() const {
    switch (standing()) {
    case StandingWord::Over:
        return tr("Over the handbook's line");
    case StandingWord::Close:
        return tr("Close to the handbook's line");
    case StandingWord::Under:
        return tr("Under the handbook's line");
    case StandingWord::CannotTell:
        return tr("Can't tell yet");
    default:
        return isBoard() ? tr("The fall of this board") : tr("The share of this brood");
    }
}

QString OtherAnswerController::sentence() const {
    if (m_answer.count == 0)
        return isBoard() ? tr("None found. The fall can still be anything from %1 mites a day.")
                               .arg(otherRange(m_answer))
                         : tr("None found. It can still be anything from %1 of 100 drone cells.")
                               .arg(otherRange(m_answer));
    return tr("About %1. It could be anything from %2.")
        .arg(otherFigure(m_sample, m_answer.q50), otherRange(m_answer));
}

QString OtherAnswerController::chanceLine() const {
    if (!m_answer.line)
        return tr("The handbook has no line for it in this month.");
    const QString figure = otherFigure(m_sample, *m_answer.line);
    return isBoard() ? tr("Chance that the true fall is over %1: %2")
                           .arg(figure, words::chance(m_answer.chanceOver))
                     : tr("Chance that the true share is over %1: %2")
                           .arg(figure, words::chance(m_answer.chanceOver));
}

QString OtherAnswerController::loadLine() const {
    if (!isBoard())
        return tr("No load in mites per 100 bees can be read from it: that depends on how much drone brood "
                  "the colony has.");
    if (m_answer.loadQ50)
        return tr("As mites per 100 bees, by the season's factor: about %1, anything from %2 to %3.")
            .arg(words::load(*m_answer.loadQ50),
                 words::load(m_answer.count == 0 ? 0 : m_answer.loadQ05.value_or(0)),
                 words::load(m_answer.loadQ95.value_or(0)));
    return m_services.say(m_noLoad);
}

QStringList OtherAnswerController::cautions() const {
    QStringList cautions;
    if (isBoard()) {
        cautions.append(tr("A board is weak evidence beside a wash: fall rises when brood hatches, when bees "
                           "groom or rob, and just after a treatment."));
        const auto hours = records::hoursOf(m_sample.board);
        if (hours && *hours < wholeDaysHours)
            cautions.append(tr("It lay for less than a day: fall differs between day and night."));
    } else {
        cautions.append(tr("Mites gather in drone brood: its share is far higher than a load, and the two "
                           "cannot be held against each other."));
    }
    return cautions;
}

bool OtherAnswerController::wantsWash() const {
    return standing() == StandingWord::Over || standing() == StandingWord::Close;
}

QString OtherAnswerController::nextLine() const {
    switch (standing()) {
    case StandingWord::Over:
    case StandingWord::Close:
        return tr("Wash half a cup before you decide: this count alone should not.");
    case StandingWord::CannotTell:
        return isBoard() ? tr("Lay the board again for two or three days, or wash half a cup.")
                         : tr("Open more cells, or wash half a cup.");
    default:
        break;
    }
    return tr("Nothing to do on its word. The next wash stays due as it was.");
}

void OtherAnswerController::listFacts() {
    QList<ChoiceListModel::Entry> entries;
    const auto add = [&](const QString& title, const QString& detail, const QString& note = {}) {
        ChoiceListModel::Entry entry;
        entry.title = title;
        entry.detail = detail;
        entry.note = note;
        entries.append(entry);
    };
    if (isBoard()) {
        const double hours = records::hoursOf(m_sample.board).value_or(0);
        add(tr("Counted"), tr("%1 in %2 h", "mites, hours")
                               .arg(words::mites(m_answer.count), QLocale().toString(hours, 'f', 0)));
        if (m_sample.board.cells > 0)
            add(tr("Of the board"), tr("%1 of %2 cells", "counted, all")
                                        .arg(m_sample.board.cellsCounted)
                                        .arg(m_sample.board.cells));
        for (const handbook::Entry* line : season::boardLines(m_month, m_services.handbook()))
            add(QString::fromStdString(line->title),
                line->value
                    ? tr("%1 mites a day").arg(words::line(*line->value))
                    : tr("%1 to %2 mites a day")
                          .arg(words::line(line->low.value_or(0)), words::line(line->high.value_or(0))),
                QString::fromStdString(line->source));
        if (m_answer.loadQ50) {
            const mites::FallFactor factor = season::fallFactor(m_month, m_services.handbook());
            add(tr("Factor of the season"),
                tr("%1 mites in the colony for one a day (%2 to %3)")
                    .arg(words::line(factor.usual), words::line(factor.low), words::line(factor.high)),
                tr("from memory; the range is our own choice"));
        }
    } else {
        add(tr("Counted"),
            tr("%1 with mites of %2 opened").arg(m_answer.count).arg(m_sample.openedCells.value_or(0)));
        if (const handbook::Entry* line = m_services.handbook().find(m_answer.lineSource))
            add(QString::fromStdString(line->title), otherFigure(m_sample, line->value.value_or(0)),
                QString::fromStdString(line->source));
    }
    m_facts.setEntries(entries);
}

QString OtherAnswerController::placeLine() const {
    const QString time = words::timeOfDay(sampledAt(m_sample));
    const QString day = words::day(records::localDate(sampledAt(m_sample)));
    const records::PositionStamp& stamp = m_sample.stamp;
    if (stamp.state != records::PositionState::Stamped)
        return tr("Taken on %1 at %2, no position").arg(day, time);
    return tr("Taken on %1 at %2, within %3")
        .arg(day, time, m_services.distance(stamp.position.accuracyM.value_or(0)));
}

void OtherAnswerController::washInstead() {
    emit washWanted(QString::fromStdString(m_sample.colonyId));
}

void OtherAnswerController::done() {
    emit homeWanted();
}

void OtherAnswerController::openSources() {
    emit sourcesWanted();
}

} // namespace halfcup::touch
