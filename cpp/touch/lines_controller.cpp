// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/lines_controller.h"

#include "season/lines.h"
#include "touch/words.h"

#include <QDate>
#include <QLocale>

#include <algorithm>

namespace halfcup::touch {

namespace {

QString monthName(int month) {
    return QLocale().standaloneMonthName(month);
}

QString perHundred(double per100) {
    return LinesController::tr("%1 per 100").arg(words::line(per100));
}

/// "1 per 100 from March, 3 per 100 from September"; "3 per 100 all year"; "1 per 100 in February".
QString throughTheYear(const std::vector<season::SeasonLine>& lines) {
    if (lines.size() == 1)
        return lines.front().from == records::MonthDay{1, 1}
                   ? LinesController::tr("%1 all year").arg(perHundred(lines.front().per100))
                   : LinesController::tr("%1 in %2; the yard's own line in other months")
                         .arg(perHundred(lines.front().per100), monthName(lines.front().from.month));
    QStringList parts;
    for (const season::SeasonLine& line : lines)
        parts.append(LinesController::tr("%1 from %2", "line, month")
                         .arg(perHundred(line.per100), monthName(line.from.month)));
    return parts.join(LinesController::tr(", ", "between lines"));
}

/// What a past value of a field says; empty where the field is no line.
QString wordsOf(const store::PastValue& past) {
    const auto* number = std::get_if<double>(&past.value);
    const auto* text = std::get_if<std::string>(&past.value);
    if (past.field == "treat_line" && number)
        return LinesController::tr("Treat line %1").arg(perHundred(*number));
    if (past.field == "own_line")
        return number ? LinesController::tr("Own line %1").arg(perHundred(*number))
                      : LinesController::tr("No own line");
    if (past.field == "line_region")
        return text && !text->empty()
                   ? LinesController::tr("By season: %1").arg(QString::fromStdString(*text))
                   : LinesController::tr("One line all year");
    return {};
}

} // namespace

QString lineSource(const Services& services, const records::Lines& lines) {
    if (lines.treatSource == "own")
        return LinesController::tr("Set by you.");
    const handbook::Entry* entry = services.handbook().find(lines.treatSource);
    return entry ? LinesController::tr("%1: %2", "a value's title and source")
                       .arg(QString::fromStdString(entry->title), QString::fromStdString(entry->source))
                 : LinesController::tr("From another version: %1")
                       .arg(QString::fromStdString(lines.treatSource));
}

LinesController::LinesController(Services& services, QObject* parent)
    : QObject(parent)
    , m_services(services) {}

QString LinesController::todayLine() const {
    const records::Lines lines = season::linesOn(m_yard, m_services.today(), m_services.handbook());
    return tr("Today %1").arg(perHundred(lines.treat));
}

QString LinesController::todaySource() const {
    return lineSource(m_services, season::linesOn(m_yard, m_services.today(), m_services.handbook()));
}

QString LinesController::ownLine() const {
    return m_yard.lines.own ? tr("Your own line: %1").arg(perHundred(*m_yard.lines.own)) : QString();
}

bool LinesController::show(const QString& yardId) {
    std::optional<records::Yard> yard;
    m_services.kept([&] { yard = m_services.store.yard(yardId.toStdString()); });
    if (!yard)
        return false;
    m_yard = *yard;
    read();
    return true;
}

void LinesController::read() {
    m_regions.setEntries(regionEntries());
    m_services.kept([&] { m_past.setEntries(pastEntries()); });
    emit changed();
}

QList<ChoiceListModel::Entry> LinesController::regionEntries() const {
    ChoiceListModel::Entry none;
    none.title = tr("One line all year");
    none.detail = perHundred(m_yard.lines.treat);
    none.note = lineSource(m_services, m_yard.lines);
    none.chosen = m_yard.lineRegion.empty();
    QList<ChoiceListModel::Entry> entries{none};
    bool known = none.chosen;
    for (const std::string& region : season::lineRegions(m_services.handbook())) {
        const auto lines = season::linesOfRegion(region, m_services.handbook());
        if (lines.empty())
            continue;
        ChoiceListModel::Entry entry;
        entry.key = QString::fromStdString(region);
        entry.title = words::fromHandbook(region);
        entry.detail = throughTheYear(lines);
        QStringList sources;
        for (const season::SeasonLine& line : lines)
            if (const handbook::Entry* value = m_services.handbook().find(line.entry))
                sources.append(QString::fromStdString(value->source));
        sources.removeDuplicates();
        entry.note = sources.join(QStringLiteral("; "));
        entry.chosen = region == m_yard.lineRegion;
        known = known || entry.chosen;
        entries.append(entry);
    }
    if (!known) { // from another version: said, not dropped
        ChoiceListModel::Entry unknown;
        unknown.key = QString::fromStdString(m_yard.lineRegion);
        unknown.title = unknown.key;
        unknown.detail = tr("This version has no figures for it. The yard's own line holds.");
        unknown.chosen = true;
        entries.append(unknown);
    }
    return entries;
}

// One row for each time they were changed: what was written together has one stamp, or follows at once.
QList<ChoiceListModel::Entry> LinesController::pastEntries() {
    QList<ChoiceListModel::Entry> entries;
    std::int64_t lastMs = -1;
    for (const store::PastValue& past : m_services.store.history(records::Kind::Yard, m_yard.id)) {
        const bool first = entries.isEmpty();
        const QString said = wordsOf(past);
        if (said.isEmpty() ||
            (first && past.field != "treat_line" && std::holds_alternative<std::monostate>(past.value)))
            continue;
        if (!first && past.stamp.utcMs == lastMs) {
            entries.last().detail += tr(". ", "between sentences") + said;
            continue;
        }
        lastMs = past.stamp.utcMs;
        const records::Moment at{lastMs, m_services.device.clock->utcOffsetMinutes(lastMs)};
        ChoiceListModel::Entry entry;
        entry.title = tr("From %1").arg(words::dayAndYear(records::localDate(at)));
        entry.detail = said;
        entries.append(entry);
    }
    std::ranges::reverse(entries);
    return entries;
}

void LinesController::follow(const QString& region) {
    records::Yard changed = m_yard;
    changed.lineRegion = region.toStdString();
    if (changed.lineRegion == m_yard.lineRegion)
        return;
    if (!m_services.kept([&] { m_services.store.save(changed); }))
        return;
    m_yard = changed;
    read();
    emit yardChanged(QString::fromStdString(m_yard.id));
}

} // namespace halfcup::touch
