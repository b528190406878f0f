// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/story_entries.h"

#include "touch/colony_entries.h"
#include "touch/other_answer_controller.h"
#include "touch/story.h"
#include "touch/words.h"

#include <QCoreApplication>

#include <algorithm>
#include <tuple>
#include <vector>

namespace halfcup::touch {

namespace {

class StoryEntries {
    Q_DECLARE_TR_FUNCTIONS(StoryEntries)
};

struct Told {
    records::Date day;
    std::int64_t atMs = 0;
    ChoiceListModel::Entry entry;
};

Told wash(const Services& services, const records::Sample& sample) {
    Told told;
    told.day = records::localDate(sampledAt(sample));
    told.atMs = sample.startedAtMs;
    ChoiceListModel::Entry& entry = told.entry;
    entry.key = QStringLiteral("wash-") + QString::fromStdString(sample.id);
    switch (sample.state) {
    case records::SampleState::Finished: {
        if (sample.otherAnswer) { // not a load: told by its method first, with no mark of a wash
            entry.title = StoryEntries::tr("%1: %2", "method, figure")
                              .arg(story::capitalised(words::method(QString::fromStdString(sample.method))),
                                   otherFigure(sample, sample.otherAnswer->q50));
            entry.detail =
                sample.otherAnswer->line
                    ? StoryEntries::tr("%1; the handbook's line is %2", "range, line")
                          .arg(otherRange(*sample.otherAnswer), words::line(*sample.otherAnswer->line))
                    : otherRange(*sample.otherAnswer);
            break;
        }
        const StandingWord::Value standing = words::headlineOf(sample);
        entry.standing = standing;
        entry.title = words::standing(standing);
        entry.detail = StoryEntries::tr("%1 per 100, %2", "a load and its range")
                           .arg(words::load(sample.answer ? sample.answer->loadQ50 : 0),
                                sample.answer ? words::loadRange(*sample.answer) : QString());
        break;
    }
    case records::SampleState::Draft:
        entry.title = StoryEntries::tr("Not finished");
        entry.detail = StoryEntries::tr("waits at: %1").arg(words::step(sample.step));
        break;
    case records::SampleState::Abandoned:
        entry.title = StoryEntries::tr("Abandoned");
        entry.detail = StoryEntries::tr("left at: %1").arg(words::step(sample.step));
        break;
    }
    entry.note = StoryEntries::tr("%1, %2", "date, method")
                     .arg(words::dayAndYear(told.day), words::method(QString::fromStdString(sample.method)));
    if (records::liesAhead(sample, services.now().utcMs))
        entry.note +=
            QLatin1Char('\n') +
            StoryEntries::tr("This date is still to come: the phone's clock was wrong, then or now. "
                             "Until then nothing is reckoned from it.");
    return told;
}

Told event(Services& services, const records::ColonyEvent& event, const records::Colony& colony) {
    Told told;
    told.day = event.day;
    told.atMs = event.recordedAtMs;
    told.entry.key = QStringLiteral("event-") + QString::fromStdString(event.id);
    told.entry.title = story::happened(services, event, colony.id);
    if (event.kind != records::EventKind::Requeened) // its words are the stock, told already
        told.entry.detail = QString::fromStdString(event.words);
    told.entry.note = words::dayAndYear(event.day);
    return told;
}

Told treatment(const Services& services, const records::Treatment& treatment) {
    Told told;
    told.day = treatment.firstDay;
    told.atMs = treatment.recordedAtMs;
    told.entry.key = QStringLiteral("treatment-") + QString::fromStdString(treatment.id);
    told.entry.title = story::treatmentName(services, treatment);
    told.entry.detail =
        StoryEntries::tr("%1, %2", "does it run, when honey may be taken")
            .arg(story::stage(services, treatment, services.today()), story::honey(services, treatment));
    const QString batch = QString::fromStdString(treatment.batch);
    told.entry.note =
        batch.isEmpty()
            ? story::course(treatment)
            : StoryEntries::tr("%1, batch %2", "course, batch").arg(story::course(treatment), batch);
    return told;
}

} // namespace

QList<ChoiceListModel::Entry> storyEntries(Services& services, const ColonyRecords& kept) {
    std::vector<Told> all;
    for (const records::Sample& sample : kept.samples)
        all.push_back(wash(services, sample));
    for (const records::ColonyEvent& each : kept.events)
        all.push_back(event(services, each, kept.colony));
    for (const records::GivenTreatment& given : kept.treatments)
        all.push_back(treatment(services, given.treatment));
    std::ranges::stable_sort(
        all, [](const Told& a, const Told& b) { return std::tie(a.day, a.atMs) > std::tie(b.day, b.atMs); });
    QList<ChoiceListModel::Entry> entries;
    for (Told& told : all)
        entries.append(std::move(told.entry));
    return entries;
}

} // namespace halfcup::touch
