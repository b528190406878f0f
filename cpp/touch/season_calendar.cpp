// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/season_calendar.h"

#include "exchange/calendar.h"
#include "touch/season_controller.h" // its texts keep their place among the translations
#include "touch/words.h"

#include <algorithm>

namespace halfcup::touch {

namespace {

QString listed(const std::vector<std::string>& labels) {
    QStringList list;
    for (const std::string& label : labels)
        list.append(QString::fromStdString(label));
    return list.join(QStringLiteral(", "));
}

} // namespace

QString placeOf(const season::SeasonDate& date, std::span<const records::YardRecords> yards) {
    const QString yard = QString::fromStdString(yards[date.yard].yard.name);
    if (date.colonyLabels.empty())
        return yard;
    if (date.colonyLabels.size() == 1)
        return SeasonController::tr("%1, colony %2", "yard, label").arg(yard, listed(date.colonyLabels));
    return SeasonController::tr("%1, colonies %2", "yard, labels").arg(yard, listed(date.colonyLabels));
}

std::string seasonCalendar(const Services& services, std::span<const records::YardRecords> yards,
                           std::span<const season::SeasonDate> dates) {
    std::vector<exchange::CalendarEntry> entries;
    const records::Date today = services.today();
    for (const season::SeasonDate& date : dates) {
        exchange::CalendarEntry entry;
        entry.key = date.key;
        // What is late is to be done now: a day that has passed rings nobody.
        entry.day = std::max(date.day, today);
        const QString what = services.say(date.phrase);
        entry.summary =
            SeasonController::tr("%1 (%2)", "what, where").arg(what, placeOf(date, yards)).toStdString();
        if (date.late)
            entry.description = SeasonController::tr("Late: it was due on %1.")
                                    .arg(words::dayAndYear(date.day))
                                    .toStdString();
        entry.place = yards[date.yard].yard.name;
        if (yards[date.yard].yard.demo)
            entry.summary =
                SeasonController::tr("Demo: %1").arg(QString::fromStdString(entry.summary)).toStdString();
        entry.alarmDaysBefore = season::alarmDaysBefore(date.kind);
        entries.push_back(std::move(entry));
    }
    return exchange::calendarText(entries, SeasonController::tr("Halfcup").toStdString(),
                                  services.now().utcMs);
}

QString calendarFileName(const records::Date& today) {
    return SeasonController::tr("halfcup-season-%1.ics", "file name")
        .arg(QString::fromStdString(records::toIso(today)));
}

} // namespace halfcup::touch
