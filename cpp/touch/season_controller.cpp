// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/season_controller.h"

#include "exchange/calendar.h"
#include "season/bee_year.h"
#include "touch/export_file.h"
#include "touch/words.h"

#include <QLocale>

#include <algorithm>

namespace halfcup::touch {

namespace {

using season::DateKind;
using season::SeasonDate;

// Before everything else the keys of entries say what they open.
const QLatin1String yardKey("yard/"), treatmentKey("treatment/"), checkKey("check/");

QString keyOf(const SeasonDate& date, const records::YardRecords& yard) {
    if (date.kind == DateKind::CheckWash)
        return checkKey + QString::fromStdString(date.treatmentId);
    if (!date.treatmentId.empty())
        return treatmentKey + QString::fromStdString(date.treatmentId);
    return yardKey + QString::fromStdString(yard.yard.id);
}

/// Days before, for an alarm of a calendar [own choice].
std::optional<int> alarmOf(DateKind kind) {
    switch (kind) {
    case DateKind::RemovalDue:
    case DateKind::CheckWash:
    case DateKind::WashDue:
        return 1;
    case DateKind::TurnDate:
        return 14;
    case DateKind::HoneyFrom:
    case DateKind::TreatmentEnds:
        break;
    }
    return std::nullopt;
}

QString listed(const std::vector<std::string>& labels) {
    QStringList list;
    for (const std::string& label : labels)
        list.append(QString::fromStdString(label));
    return list.join(QStringLiteral(", "));
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
    return tr("Twelve months from %1: %n treatment(s).", nullptr, static_cast<int>(m_picture.courses.size()))
        .arg(monthHeading(m_picture.first));
}

QString SeasonController::placeOf(const SeasonDate& date) const {
    const QString yard = QString::fromStdString(m_yards[date.yard].yard.name);
    if (date.colonyLabels.empty())
        return yard;
    if (date.colonyLabels.size() == 1)
        return tr("%1, colony %2", "yard, label").arg(yard, listed(date.colonyLabels));
    return tr("%1, colonies %2", "yard, labels").arg(yard, listed(date.colonyLabels));
}

void SeasonController::refresh() {
    m_result.clear();
    m_failed = false;
    m_yards.clear();
    m_dates.clear();
    m_services.kept([&] {
        for (const records::Yard& yard : m_services.store.yards())
            if (auto kept = m_services.store.yardRecords(yard.id))
                m_yards.push_back(std::move(*kept));
        m_dates = season::seasonDates(m_yards, m_services.now(), daysAhead);
    });
    m_demo = std::ranges::any_of(m_yards, [](const auto& kept) { return kept.yard.demo; });
    listDates();
    drawMonths();
    emit changed();
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
    std::ranges::stable_partition(ordered, &SeasonDate::late);
    for (const SeasonDate* date : ordered) {
        ChoiceListModel::Entry entry;
        entry.key = keyOf(*date, m_yards[date->yard]);
        entry.title = m_services.say(date->phrase);
        entry.detail = placeOf(*date);
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

void SeasonController::drawMonths() {
    const records::Date today = m_services.today();
    m_picture = {};
    m_picture.today = today;
    m_picture.first = season::beeYearBegin(
        today, m_yards.empty() ? season::BeeYearStart::January : season::beeYearStart(m_yards.front().yard));
    for (int i = 0; i < MonthsGeometry::months; ++i)
        m_picture.letters.append(
            QLocale().standaloneMonthName((m_picture.first.month - 1 + i) % 12 + 1, QLocale::NarrowFormat));
    for (const records::YardRecords& kept : m_yards)
        for (const records::GivenTreatment& given : kept.treatments)
            if (!given.treatment.removed && given.treatment.yardId == kept.yard.id)
                m_picture.courses.append({given.treatment.firstDay, records::endOf(given.treatment)});
    std::ranges::sort(m_picture.courses, {}, &MonthsPicture::Course::from);
    for (const SeasonDate& date : m_dates) {
        if (date.kind == DateKind::TurnDate && !m_picture.turnDates.contains(date.day))
            m_picture.turnDates.append(date.day);
        if (date.kind == DateKind::WashDue || date.kind == DateKind::CheckWash)
            m_picture.washes.append(date.day);
    }
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
    std::vector<exchange::CalendarEntry> entries;
    const records::Date today = m_services.today();
    for (const SeasonDate& date : m_dates) {
        exchange::CalendarEntry entry;
        entry.key = date.key;
        // What is late is to be done now: a day that has passed rings nobody.
        entry.day = std::max(date.day, today);
        const QString what = m_services.say(date.phrase);
        entry.summary = tr("%1 (%2)", "what, where").arg(what, placeOf(date)).toStdString();
        if (date.late)
            entry.description = tr("Late: it was due on %1.").arg(words::dayAndYear(date.day)).toStdString();
        entry.place = m_yards[date.yard].yard.name;
        if (m_yards[date.yard].yard.demo)
            entry.summary = tr("Demo: %1").arg(QString::fromStdString(entry.summary)).toStdString();
        entry.alarmDaysBefore = alarmOf(date.kind);
        entries.push_back(std::move(entry));
    }
    const std::string text =
        exchange::calendarText(entries, tr("Halfcup").toStdString(), m_services.now().utcMs);
    const QString name =
        tr("halfcup-season-%1.ics", "file name").arg(QString::fromStdString(records::toIso(today)));
    const Exported written = writeExport(m_services, name, text);
    m_failed = written.failed;
    m_result =
        written.failed
            ? written.sentence
            : tr("%n date(s) written to %1", nullptr, static_cast<int>(entries.size())).arg(written.path);
    emit changed();
    return !m_failed;
}

} // namespace halfcup::touch
