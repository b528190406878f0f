// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// The days of a yard that come every year: the keeper's, or the usual ones and why.
#include "season/bee_year.h"
#include "season/lines.h"
#include "season/turn_date.h"
#include "touch/story.h"
#include "touch/typed_date.h"
#include "touch/words.h"
#include "touch/yards_controller.h"

namespace halfcup::touch {

namespace {

QString dayOf(const std::optional<records::MonthDay>& day, int year) {
    return day ? words::day(records::dateIn(year, *day)) : QString();
}

} // namespace

QString YardsController::followedLine() const {
    if (m_yard.lineRegion.empty())
        return {};
    const records::Lines lines = season::linesOn(m_yard, m_services.today(), m_services.handbook());
    return tr("By season: %1. Today the line is %2 per 100.", "region, line")
        .arg(QString::fromStdString(m_yard.lineRegion), words::line(lines.treat));
}

QString YardsController::turnDate() const {
    return dayOf(m_yard.turnDate, m_services.today().year);
}

QString YardsController::turnDateHint() const {
    records::Yard usual = m_yard;
    usual.turnDate.reset();
    const auto day = season::turnDay(usual);
    if (!day)
        return tr(
            "Mites must be low by then. In the tropics none is taken to be needed; type one where your bees "
            "have a winter.");
    const QString when = dayOf(day, m_services.today().year);
    if (!m_yard.position)
        return tr("Mites must be low by then. Nothing typed: %1, as in the north, because the yard has no "
                  "position.")
            .arg(when);
    return (m_yard.position->latitudeDeg > 0
                ? tr("Mites must be low by then. Nothing typed: %1, usual in the north.")
                : tr("Mites must be low by then. Nothing typed: %1, half a year after the north."))
        .arg(when);
}

QString YardsController::firstWash() const {
    return dayOf(m_yard.firstWashFrom, m_services.today().year);
}

QString YardsController::firstWashHint() const {
    season::YardYear year = season::yardYear(m_yard);
    year.firstWashFrom.reset();
    const season::FirstWash first = season::firstWash(year, m_services.today());
    const QString when = story::day(m_services, first.from);
    return first.known
               ? tr("When colonies can be opened. Nothing typed: from the first visit of the year, %1.")
                     .arg(when)
               : tr("When colonies can be opened. Nothing typed: from the first visit of the year, or %1.")
                     .arg(when);
}

bool YardsController::saveAll(const QString& name, const QString& treatLine, const QString& ownLine,
                              const QString& turnDate, const QString& firstWash) {
    records::Yard changed = m_yard;
    const auto read = [&](const QString& typed, const QString& what, std::optional<records::MonthDay>& into) {
        const TypedDate day = readYearlyDay(typed, m_services.today(), what);
        if (!day.problem.isEmpty())
            return fail(day.problem);
        into.reset();
        if (day.date)
            into = records::MonthDay{day.date->month, day.date->day};
        return true;
    };
    return read(turnDate, tr("The turn date"), changed.turnDate) &&
           read(firstWash, tr("The day of the first wash"), changed.firstWashFrom) &&
           write(changed, name, treatLine, ownLine);
}

} // namespace halfcup::touch
