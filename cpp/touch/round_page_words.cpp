// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// What the page of a yard round says.
#include "touch/colony_entries.h"
#include "touch/round_controller.h"
#include "touch/round_records.h"
#include "touch/words.h"

#include <algorithm>

namespace halfcup::touch {

using Picked = records::Round::Picked;
using season::RoundPlace;
using season::RoundVerdict;

QString RoundController::subtitle() const {
    if (m_view == Planning)
        return {};
    const QString done = tr("%1 of %2 washed").arg(m_reading.done()).arg(m_reading.planned());
    if (m_view == Going)
        return done;
    return tr("%1 · %2", "day, how many were washed")
        .arg(words::dayAndYear(records::localDate({m_round.startedAtMs, m_round.utcOffsetMinutes})), done);
}

QString RoundController::mainAction() const {
    if (m_view == Ended)
        return tr("Done");
    if (m_view == Going) {
        const auto next = m_reading.next();
        if (!next)
            return m_reading.inTray() > 0 ? tr("Wash the jars") : tr("End the round");
        const auto found =
            std::ranges::find_if(m_labels, [&](const auto& each) { return each.first == *next; });
        return tr("Wash colony %1 next").arg(found == m_labels.end() ? QString() : found->second);
    }
    if (m_living.empty() || (m_way == Picked::ByKeeper && m_round.colonyIds.empty()))
        return {};
    return tr("Start the round");
}

QString RoundController::planLine() const {
    if (m_living.empty())
        return tr("No colony lives in this yard.");
    if (m_living.size() == 1)
        return tr("One colony stands here: its wash is the yard's figure.");
    if (m_living.size() == 2)
        return tr("Two colonies stand here: wash both.");
    return tr("Wash some of the colonies, one after another, and know the yard's own load with its range.");
}

QString RoundController::handLine() const {
    if (m_way != Picked::ByKeeper || m_living.size() < 3)
        return {};
    return tr("Colonies have to be chosen by chance, or all washed. Picking the strongest makes the figure "
              "too high, and no sum can mend that.");
}

void RoundController::listPlan() {
    QList<ChoiceListModel::Entry> ways, numbers, byHand, earlier;
    const auto all = static_cast<qint64>(m_living.size());
    const auto way = [&](const QString& key, const QString& title, const QString& detail, Picked picked) {
        ChoiceListModel::Entry entry;
        entry.key = key;
        entry.title = title;
        entry.detail = detail;
        entry.chosen = m_way == picked;
        ways.append(entry);
    };
    if (all >= 3) {
        way(QStringLiteral("random"), tr("Picked by chance"), tr("the phone draws them"), Picked::AtRandom);
        way(QStringLiteral("hand"), tr("Picked by you"), {}, Picked::ByKeeper);
        way(QStringLiteral("all"), tr("All %1 colonies").arg(all), {}, Picked::All);
    }
    if (all >= 3 && m_way == Picked::AtRandom) {
        const auto number = [&](qint64 count, const QString& detail) {
            ChoiceListModel::Entry entry;
            entry.key = QString::number(count);
            entry.title = tr("%1 of %2 colonies").arg(count).arg(all);
            entry.detail = detail;
            entry.chosen = m_count == count;
            numbers.append(entry);
        };
        const handbook::Entry& entry = m_services.handbook().at("colonies-per-yard");
        const std::int64_t usual = season::plannedByHandbook(*entry.figure(), all);
        number(usual, QString::fromStdString(entry.source));
        if (m_byLoad && m_byLoad->washes != usual) {
            QString why = tr("for a range of about a quarter either way, at the %1 per 100 last found here")
                              .arg(words::load(m_byLoad->expectedLoad));
            if (!m_byLoad->enoughForIt)
                why = tr("Even all of them, one wash each, leave a wide range at the %1 per 100 last found "
                         "here.")
                          .arg(words::load(m_byLoad->expectedLoad));
            number(m_byLoad->washes, why);
        }
    }
    if (all >= 3 && m_way == Picked::ByKeeper)
        for (const records::RecordId& id : m_living) {
            ChoiceListModel::Entry entry;
            entry.key = QString::fromStdString(id);
            entry.title = tr("Colony %1").arg(label(id));
            entry.chosen = std::ranges::find(m_round.colonyIds, id) != m_round.colonyIds.end();
            byHand.append(entry);
        }
    m_services.kept([&] {
        for (const records::Round& round : m_services.store.roundsOf(m_yard.id)) {
            if (!round.endedAtMs)
                continue;
            const ReadRound kept = readKept(m_services, round);
            ChoiceListModel::Entry entry;
            entry.key = QString::fromStdString(round.id);
            entry.title = words::dayAndYear(records::localDate({round.startedAtMs, round.utcOffsetMinutes}));
            entry.detail = tr("%1 of %2 washed").arg(kept.reading.done()).arg(kept.reading.planned());
            if (kept.reading.figure)
                entry.note = tr("about %1 per 100").arg(words::load(kept.reading.figure->load.q50));
            earlier.append(entry);
        }
    });
    m_ways.setEntries(ways);
    m_numbers.setEntries(numbers);
    m_byHand.setEntries(byHand);
    m_earlier.setEntries(earlier);
}

void RoundController::listParts() {
    QList<ChoiceListModel::Entry> washed, left;
    for (const season::RoundPart& part : m_reading.parts) {
        ChoiceListModel::Entry entry;
        entry.key = QString::fromStdString(part.colonyId);
        entry.title = tr("Colony %1").arg(label(part.colonyId));
        if (part.place == RoundPlace::Left) {
            if (!part.jar.empty())
                entry.detail = tr("in the tray: jar %1").arg(QString::fromStdString(part.jar));
            left.append(entry);
            continue;
        }
        if (part.place == RoundPlace::Gone) {
            entry.detail = tr("no longer in this yard: left out");
        } else {
            entry.standing = words::headlineOf(*part.wash);
            entry.detail = tr("%1 · %2", "load, standing")
                               .arg(loadLine(*part.wash),
                                    words::standing(static_cast<StandingWord::Value>(entry.standing)));
            if (part.place == RoundPlace::OtherMethod)
                entry.note = tr("counted another way than the others: not in the yard's figure");
            else if (part.place == RoundPlace::Damaged)
                entry.note = tr("figures no wash can have: not in the yard's figure");
            else if (part.standsOut)
                entry.note = tr("far above the others");
        }
        washed.append(entry);
    }
    m_washed.setEntries(washed);
    m_left.setEntries(left);
}

QString RoundController::clearLine() const {
    if (m_view != Going)
        return {};
    const bool goesOn = m_reading.count(RoundPlace::Left) > 0;
    switch (m_reading.verdict) {
    case RoundVerdict::Under:
        return goesOn ? tr("The answer is clear: the yard is under its line of %1. You can stop here, or go "
                           "on for a narrower range.")
                            .arg(words::line(m_line))
                      : tr("All are washed: the yard is under its line of %1.").arg(words::line(m_line));
    case RoundVerdict::Over:
        return goesOn ? tr("The answer is clear: the yard is over its line of %1. You can stop here, or go "
                           "on for a narrower range.")
                            .arg(words::line(m_line))
                      : tr("All are washed: the yard is over its line of %1.").arg(words::line(m_line));
    case RoundVerdict::NotSettled:
        return tr("All are washed, and neither side of the line is settled. End the round to see how near it "
                  "is.");
    case RoundVerdict::GoOn:
        break;
    }
    return {};
}

QString RoundController::skipAction() const {
    return m_view == Going && m_reading.next() && m_reading.planned() > 1 ? tr("Skip this one") : QString();
}

int RoundController::standing() const {
    return m_reading.figure ? StandingWord::from(m_reading.figure->standing) : StandingWord::Unknown;
}

QString RoundController::headline() const {
    return m_reading.figure ? words::standing(StandingWord::from(m_reading.figure->standing))
                            : tr("No answer");
}

QString RoundController::sentence() const {
    if (!m_reading.figure)
        return tr("No colony was washed in this round.");
    const mites::LoadEstimate& load = m_reading.figure->load;
    const bool noneFound = std::ranges::none_of(m_reading.parts, [](const season::RoundPart& part) {
        return part.place == RoundPlace::Washed && part.wash->answer->mites > 0;
    });
    if (noneFound)
        return tr("None found. The yard's load can still be anything from 0 to %1 mites on every 100 bees.")
            .arg(words::load(load.q95));
    return tr("About %1 mites on every 100 bees in this yard. It could be anything from %2 to %3.")
        .arg(words::load(load.q50), words::load(load.q05), words::load(load.q95));
}

QString RoundController::chanceLine() const {
    if (!m_reading.figure)
        return {};
    return tr("Chance that the yard's load is over %1: %2")
        .arg(words::line(m_line), words::chance(m_reading.figure->chanceOver));
}

QString RoundController::fromLine() const {
    if (!m_reading.figure)
        return {};
    const auto counted = m_reading.count(RoundPlace::Washed);
    const QString from = tr("From %1 of the %2 in this yard").arg(counted).arg(m_reading.colonies);
    switch (m_round.picked) {
    case Picked::AtRandom:
        return tr("%1, picked by chance.", "from so many").arg(from);
    case Picked::ByKeeper:
        return tr("%1, picked by you: it holds only if these are like the others.", "from so many").arg(from);
    case Picked::All:
        break;
    }
    return tr("%1.", "from so many").arg(from);
}

QString RoundController::labelsOf(season::RoundPlace place) const {
    QStringList labels;
    for (const season::RoundPart& part : m_reading.parts)
        if (part.place == place)
            for (const auto& [id, text] : m_labels)
                if (id == part.colonyId)
                    labels.append(text);
    return labels.join(QStringLiteral(", "));
}

QString RoundController::outLine() const {
    QStringList labels;
    for (const season::RoundPart& part : m_reading.parts)
        if (part.standsOut)
            for (const auto& [id, text] : m_labels)
                if (id == part.colonyId)
                    labels.append(text);
    if (labels.isEmpty())
        return {};
    return tr("Far above the others: colony %1. Look at it by itself.", "one or more labels")
        .arg(labels.join(QStringLiteral(", ")));
}

QStringList RoundController::leftOut() const {
    QStringList lines;
    const auto say = [&](RoundPlace place, const QString& sentence) {
        if (const QString labels = labelsOf(place); !labels.isEmpty())
            lines.append(sentence.arg(labels));
    };
    say(RoundPlace::Gone, tr("No longer in this yard, left out: colony %1."));
    say(RoundPlace::OtherMethod, tr("Counted another way than the others, left out: colony %1."));
    say(RoundPlace::Damaged, tr("Figures no wash can have, left out: colony %1."));
    say(RoundPlace::Left, tr("Not washed: colony %1."));
    return lines;
}

} // namespace halfcup::touch
