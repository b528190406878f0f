// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/choice_controller.h"

#include "season/lines.h"
#include "season/turn_date.h"
#include "touch/verdict_mark.h"
#include "touch/words.h"

#include <QLocale>

#include <algorithm>
#include <array>
#include <stdexcept>

namespace halfcup::touch {

namespace {

constexpr std::array waits{0, 7, 14, 28}; // days from the day asked for to the start

pictures::OutlookBand bandOf(const season::Outlook& outlook) {
    pictures::OutlookBand band;
    for (const season::OutlookDay& day : outlook.days) {
        band.low.push_back(day.load.low);
        band.middle.push_back(day.load.middle);
        band.high.push_back(day.load.high);
    }
    return band;
}

int dayIn(const season::Outlook& outlook, const records::Date& day) {
    return records::daysBetween(outlook.days.front().day, day);
}

} // namespace

ChoiceController::ChoiceController(Services& services, QObject* parent)
    : QObject(parent)
    , m_services(services) {}

QString ChoiceController::context() const {
    return m_scope.colonies.empty() ? QString() : scopeName(m_scope);
}

int ChoiceController::verdict() const {
    return VerdictMark::from(m_choice.verdict);
}

QString ChoiceController::verdictWord() const {
    return VerdictMark::word(m_choice.verdict);
}

QStringList ChoiceController::cautions() const {
    QStringList sentences;
    if (!m_choice.hazard.empty())
        sentences.append(QString::fromStdString(m_choice.hazard));
    if (m_choice.kind == season::ChoiceKind::Substance)
        sentences.append(
            tr("Honey: no super comes on, and no honey is taken, before the label's withdrawal is over."));
    sentences.append(tr("The label in your hand and your local law outrank this app. How much to give stands "
                        "on the label."));
    return sentences;
}

QString ChoiceController::courseLine() const {
    if (m_choice.kind == season::ChoiceKind::Measure || !m_choice.endsBy)
        return {};
    if (m_choice.courseDaysLongest <= 1)
        return tr("Given once. Begun on %1, it ends that day.").arg(words::day(begins()));
    const records::Date shortest = records::plusDays(begins(), m_choice.courseDaysShortest - 1);
    if (m_choice.courseDaysLongest <= m_choice.courseDaysShortest)
        return tr("Course: %1, by the label. Begun on %2, it would end by %3.")
            .arg(words::days(m_choice.courseDaysShortest), words::day(begins()), words::day(shortest));
    const records::Date longest = records::plusDays(begins(), m_choice.courseDaysLongest - 1);
    return tr("Course: %1 to %2, by the label. Begun on %3, it would end by %4, or %5.",
              "days, days, day, day, day")
        .arg(QLocale().toString(m_choice.courseDaysShortest), words::days(m_choice.courseDaysLongest),
             words::day(begins()), words::day(shortest), words::day(longest));
}

QString ChoiceController::waitText() const {
    const int days = waits.at(m_wait);
    return days == 0 ? tr("Begun on %1").arg(words::day(begins()))
                     : tr("Begun %1 later, on %2").arg(words::days(days), words::day(begins()));
}

bool ChoiceController::canWaitMore() const {
    return m_wait + 1 < waits.size();
}

records::Date ChoiceController::begins() const {
    return records::plusDays(m_scope.from, waits.at(m_wait));
}

void ChoiceController::show(const TreatScope& scope, const season::Choice& choice) {
    m_scope = scope;
    m_choice = choice;
    m_wait = 0;
    listReasons();
    foretell();
    emit changed();
}

void ChoiceController::listReasons() {
    QList<ChoiceListModel::Entry> entries;
    for (const season::Reason& reason : m_choice.reasons) {
        ChoiceListModel::Entry entry;
        entry.title = m_services.say(reason.phrase);
        entry.standing = VerdictMark::from(reason.verdict);
        entry.detail = sourceLine(m_services.handbook(), reason.entry);
        if (const handbook::Entry* found = m_services.handbook().find(reason.entry))
            entry.key = QString::fromStdString(found->topic);
        if (entry.detail.isEmpty())
            entry.detail = tr("a choice of this app"); // all that is said of its own
        entries.append(entry);
    }
    m_reasons.setEntries(entries);
}

/// The wash to start from: of several colonies the one with the highest load.
std::optional<season::WhatIf> ChoiceController::question() {
    const records::Sample* worst = nullptr;
    records::Date washedOn;
    for (const records::Sample& sample : m_scope.kept.latestWashes) {
        const bool concerned = std::ranges::any_of(
            m_scope.colonies, [&](const records::Colony& colony) { return colony.id == sample.colonyId; });
        const auto last = season::lastWashOf(sample);
        if (!concerned || !last || !sample.answer || last->washedOn > m_scope.from ||
            records::daysBetween(last->washedOn, m_scope.from) > season::oldestStartDays)
            continue;
        if (!worst || sample.answer->loadQ50 > worst->answer->loadQ50) {
            worst = &sample;
            washedOn = last->washedOn;
        }
    }
    if (!worst) {
        m_startLine = tr("No outlook: not washed in the last %1.").arg(words::days(season::oldestStartDays));
        return std::nullopt;
    }
    season::WhatIf asked;
    asked.start = {washedOn, worst->answer->loadQ05, worst->answer->loadQ50, worst->answer->loadQ95};
    asked.from = m_scope.from;
    asked.startsInDays = waits.at(m_wait);
    asked.turnDate = season::turnDateFrom(m_scope.kept.yard, m_scope.from);
    asked.southern = m_scope.kept.yard.position && m_scope.kept.yard.position->latitudeDeg < 0;
    for (const records::GivenTreatment& given : m_scope.kept.treatments)
        if (!given.treatment.removed &&
            std::ranges::find(given.colonyIds, worst->colonyId) != given.colonyIds.end())
            asked.since.push_back(
                {given.treatment.substance, given.treatment.firstDay, records::endOf(given.treatment)});
    const auto label = std::ranges::find(m_scope.colonies, worst->colonyId, &records::Colony::id)->label;
    m_startLine = m_scope.colonies.size() > 1
                      ? tr("From the wash of %1, colony %2, the highest of them: %3 per 100.")
                            .arg(words::day(washedOn), QString::fromStdString(label),
                                 words::load(worst->answer->loadQ50))
                      : tr("From the wash of %1: %2 per 100.")
                            .arg(words::day(washedOn), words::load(worst->answer->loadQ50));
    return asked;
}

void ChoiceController::foretell() {
    m_nothingLine.clear();
    m_withLine.clear();
    m_outlookNotes.clear();
    m_picture = {};
    const auto asked = question();
    if (!asked)
        return;
    try {
        const season::Outlook nothing = season::outlookOfNothing(*asked, m_services.handbook());
        const auto with = season::outlookWith(m_choice, *asked, m_services.handbook());
        m_nothingLine = m_services.say(season::sentenceOf(nothing));
        m_withLine = m_services.say(with ? season::sentenceOf(*with) : season::whyNoOutlook(m_choice));
        for (const season::Phrase& note : nothing.notes)
            m_outlookNotes.append(m_services.say(note));
        m_outlookNotes.append(
            tr("A usual colony's season, from one wash on; mites carried in are left out. The bands are the "
               "range: of the wash, of growth and of what the treatment was seen to kill."));
        if (nothing.days.empty())
            return;
        pictures::OutlookChart& chart = m_picture.chart;
        chart.start = nothing.days.front().day;
        chart.nothing = bandOf(nothing);
        if (with)
            chart.with = bandOf(*with);
        chart.line = season::linesOn(m_scope.kept.yard, m_scope.from, m_services.handbook()).treat;
        chart.today = dayIn(nothing, asked->from);
        chart.turnDay = nothing.atTurnDate ? dayIn(nothing, nothing.atTurnDate->day) : -1;
        chart.autumnDay = nothing.atMidAutumn ? dayIn(nothing, nothing.atMidAutumn->day) : -1;
    } catch (const std::invalid_argument& error) { // a wash whose figures the model cannot start from
        m_startLine = QString::fromUtf8(error.what());
    }
}

void ChoiceController::waitMore() {
    if (!canWaitMore())
        return;
    ++m_wait;
    foretell();
    emit changed();
}

void ChoiceController::waitLess() {
    if (!canWaitLess())
        return;
    --m_wait;
    foretell();
    emit changed();
}

void ChoiceController::record() {
    emit recordWanted();
}

void ChoiceController::openSource(const QString& topic) {
    emit sourceWanted(topic.isEmpty() ? QStringLiteral("substances") : topic);
}

} // namespace halfcup::touch
