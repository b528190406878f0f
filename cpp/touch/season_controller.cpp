// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/season_controller.h"

#include "pictures/season_strip_of_records.h"
#include "season/bee_year.h"
#include "season/turn_date.h"
#include "touch/export_file.h"
#include "touch/season_calendar.h"
#include "touch/words.h"

#include <QLocale>

#include <algorithm>

namespace halfcup::touch {

namespace {

using season::DateKind;
using season::SeasonDate;

// Before everything else the keys of entries say what they open.
const QLatin1String yardKey("yard/"), treatmentKey("treatment/"), checkKey("check/");

constexpr std::int64_t dayMs = 86'400'000;
constexpr std::int64_t keptForMs = 600'000; // what was read is not read again for so long [convention]

QString keyOf(const SeasonDate& date, const records::YardRecords& yard) {
    if (date.kind == DateKind::CheckWash)
        return checkKey + QString::fromStdString(date.treatmentId);
    if (!date.treatmentId.empty())
        return treatmentKey + QString::fromStdString(date.treatmentId);
    return yardKey + QString::fromStdString(yard.yard.id);
}

QString monthHeading(const records::Date& day) {
    return SeasonController::tr("%1 %2", "month and year")
        .arg(QLocale().standaloneMonthName(day.month))
        .arg(day.year);
}

} // namespace

SeasonController::SeasonController(Services& services, QObject* parent)
    : QObject(parent)
    , m_services(services) {}

QString SeasonController::summary() const {
    const auto late = std::ranges::count_if(m_dates, &SeasonDate::late);
    const QString yards = tr("%n yard(s)", nullptr, static_cast<int>(m_yards.size()));
    return late == 0 ? yards : tr("%1 · %2 late", "yards, number").arg(yards).arg(late);
}

QString SeasonController::pictureSpoken() const {
    return pictures::sentenceOf(m_picture.shown);
}

PictureLegend SeasonController::legend() const {
    return {pictures::legendOf(m_picture.shown)};
}

void SeasonController::refresh() {
    m_result.clear();
    m_failed = false;
    m_dates.clear();
    m_picture = {};
    m_services.kept([&] {
        readYards();
        m_dates = season::seasonDates(m_yards, m_services.now(), daysAhead);
        readPicture();
    });
    m_demo = std::ranges::any_of(m_yards, [](const auto& kept) { return kept.yard.demo; });
    listDates();
    emit changed();
}

/// All yards are much to read, and stay as they are while nothing is written. Throws store::StoreError.
void SeasonController::readYards() {
    const store::Store::Written written = m_services.store.written();
    const std::int64_t nowMs = m_services.now().utcMs;
    // Not for ever: a wash that lay ahead is one of them when its day has come.
    if (m_read && m_read->written == written && nowMs >= m_read->atMs && nowMs - m_read->atMs < keptForMs)
        return;
    m_read.reset();
    m_yards.clear();
    for (const records::Yard& yard : m_services.store.yards())
        if (auto kept = m_services.store.yardRecords(yard.id))
            m_yards.push_back(std::move(*kept));
    const records::Date today = m_services.today();
    m_first = season::beeYearBegin(today, m_yards.empty() ? season::BeeYearStart::January
                                                          : season::beeYearStart(m_yards.front().yard));
    // A day sooner: the first day begins earlier where clocks are ahead of UTC.
    m_washDays = m_services.store.washDays((records::daysSinceEpoch(m_first) - 1) * dayMs);
    m_read = {written, nowMs};
}

void SeasonController::listDates() {
    QList<ChoiceListModel::Entry> entries;
    const records::Date today = m_services.today();
    for (const records::YardRecords& kept : m_yards)
        for (const records::GivenTreatment& given : kept.treatments) {
            const records::Treatment& treatment = given.treatment;
            if (treatment.yardId != kept.yard.id || !records::isRunningOn(treatment, today))
                continue;
            ChoiceListModel::Entry entry;
            entry.key = treatmentKey + QString::fromStdString(treatment.id);
            entry.title = QString::fromStdString(treatment.product);
            entry.detail = tr("%1, %n colony(ies)", nullptr, static_cast<int>(given.colonyIds.size()))
                               .arg(QString::fromStdString(kept.yard.name));
            entry.note = tr("until %1").arg(words::day(treatment.lastDay));
            entry.section = tr("Running now");
            entries.append(entry);
        }
    std::vector<const SeasonDate*> ordered;
    for (const SeasonDate& date : m_dates)
        ordered.push_back(&date);
    std::stable_partition(ordered.begin(), ordered.end(), [](const SeasonDate* date) { return date->late; });
    for (const SeasonDate* date : ordered) {
        ChoiceListModel::Entry entry;
        entry.key = keyOf(*date, m_yards[date->yard]);
        entry.title = m_services.say(date->phrase);
        entry.detail = placeOf(*date, m_yards);
        entry.note =
            date->late ? tr("%1, %2 late", "day, number of days")
                             .arg(words::day(date->day), words::days(records::daysBetween(date->day, today)))
            : date->day == today ? tr("today")
                                 : words::day(date->day);
        entry.section = date->late ? tr("Late") : monthHeading(date->day);
        entries.append(entry);
    }
    QString above;
    for (ChoiceListModel::Entry& entry : entries) // one heading over each group
        if (entry.section == above)
            entry.section.clear();
        else
            above = entry.section;
    m_list.setEntries(entries);
}

void SeasonController::readPicture() {
    const records::Date today = m_services.today();
    pictures::SeasonStrip& strip = m_picture.shown;
    strip = pictures::seasonStripOf(m_yards, m_washDays, m_first, today);
    strip.today = today;
    for (const records::YardRecords& kept : m_yards)
        if (const auto turn = season::turnDateFrom(kept.yard, m_first)) // also one that has passed
            strip.turnDates.push_back(*turn);
    for (const SeasonDate& date : m_dates)
        if (date.kind == DateKind::WashDue || date.kind == DateKind::CheckWash)
            strip.due.push_back(date.day);
}

void SeasonController::open(const QString& key) {
    if (key.startsWith(treatmentKey))
        emit treatmentWanted(key.mid(treatmentKey.size()));
    else if (key.startsWith(checkKey))
        emit checkWanted(key.mid(checkKey.size()));
    else if (key.startsWith(yardKey))
        emit yardWanted(key.mid(yardKey.size()));
}

bool SeasonController::writeCalendar() {
    const std::string text = seasonCalendar(m_services, m_yards, m_dates);
    const QString name = calendarFileName(m_services.today());
    const Exported written = writeExport(m_services, name, text);
    m_failed = written.failed;
    m_result = written.failed ? written.sentence
                              : tr("%n date(s) written to %1", nullptr, static_cast<int>(m_dates.size()))
                                    .arg(whereItIs(m_services, written.path));
    emit changed();
    return !m_failed;
}

} // namespace halfcup::touch
