// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/clash_words.h"

#include "records/clean_text.h"
#include "records/colony_event.h"
#include "touch/story.h"
#include "touch/words.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>
#include <array>

namespace halfcup::touch::plan {

namespace {

class ClashWords {
    Q_DECLARE_TR_FUNCTIONS(ClashWords)
};

constexpr qsizetype longestShown = 60; // characters of a value [convention]
constexpr int aLeapYear = 2024;        // every day of a year is in it

struct Name {
    std::string_view field;
    const char* words;
};

constexpr std::array names{
    Name{"batch", QT_TRANSLATE_NOOP("ClashWords", "batch")},
    Name{"bees", QT_TRANSLATE_NOOP("ClashWords", "bees counted")},
    Name{"board_cells_counted", QT_TRANSLATE_NOOP("ClashWords", "cells counted")},
    Name{"brood", QT_TRANSLATE_NOOP("ClashWords", "brood")},
    Name{"colony_id", QT_TRANSLATE_NOOP("ClashWords", "colony")},
    Name{"day", QT_TRANSLATE_NOOP("ClashWords", "day")},
    Name{"done_by", QT_TRANSLATE_NOOP("ClashWords", "done by")},
    Name{"ended_at_ms", QT_TRANSLATE_NOOP("ClashWords", "end")},
    Name{"event", QT_TRANSLATE_NOOP("ClashWords", "what happened")},
    Name{"expiry", QT_TRANSLATE_NOOP("ClashWords", "expiry")},
    Name{"first_day", QT_TRANSLATE_NOOP("ClashWords", "first day")},
    Name{"first_wash_from", QT_TRANSLATE_NOOP("ClashWords", "first wash from")},
    Name{"floor", QT_TRANSLATE_NOOP("ClashWords", "floor")},
    Name{"frames", QT_TRANSLATE_NOOP("ClashWords", "frames of bees")},
    Name{"jar", QT_TRANSLATE_NOOP("ClashWords", "jar")},
    Name{"label", QT_TRANSLATE_NOOP("ClashWords", "label")},
    Name{"last_day", QT_TRANSLATE_NOOP("ClashWords", "last day")},
    Name{"latitude_deg", QT_TRANSLATE_NOOP("ClashWords", "latitude")},
    Name{"line_region", QT_TRANSLATE_NOOP("ClashWords", "region of the lines")},
    Name{"longitude_deg", QT_TRANSLATE_NOOP("ClashWords", "longitude")},
    Name{"mites", QT_TRANSLATE_NOOP("ClashWords", "mites")},
    Name{"mites_second_rinse", QT_TRANSLATE_NOOP("ClashWords", "mites of the second rinse")},
    Name{"name", QT_TRANSLATE_NOOP("ClashWords", "name")},
    Name{"note", QT_TRANSLATE_NOOP("ClashWords", "note")},
    Name{"opened_cells", QT_TRANSLATE_NOOP("ClashWords", "cells opened")},
    Name{"other_colony_id", QT_TRANSLATE_NOOP("ClashWords", "other colony")},
    Name{"other_yard_id", QT_TRANSLATE_NOOP("ClashWords", "other yard")},
    Name{"own_line", QT_TRANSLATE_NOOP("ClashWords", "own line")},
    Name{"prescriber", QT_TRANSLATE_NOOP("ClashWords", "prescriber")},
    Name{"product", QT_TRANSLATE_NOOP("ClashWords", "product")},
    Name{"proof", QT_TRANSLATE_NOOP("ClashWords", "receipt")},
    Name{"quantity", QT_TRANSLATE_NOOP("ClashWords", "quantity")},
    Name{"queen", QT_TRANSLATE_NOOP("ClashWords", "queen")},
    Name{"reach_m", QT_TRANSLATE_NOOP("ClashWords", "reach in metres")},
    Name{"registration_number", QT_TRANSLATE_NOOP("ClashWords", "registration number")},
    Name{"removal_due", QT_TRANSLATE_NOOP("ClashWords", "removal due")},
    Name{"removed", QT_TRANSLATE_NOOP("ClashWords", "removed")},
    Name{"removed_on", QT_TRANSLATE_NOOP("ClashWords", "taken out on")},
    Name{"same_as", QT_TRANSLATE_NOOP("ClashWords", "the same as")},
    Name{"scoop_volume_ml", QT_TRANSLATE_NOOP("ClashWords", "scoop in ml")},
    Name{"stand_east_m", QT_TRANSLATE_NOOP("ClashWords", "metres east on the plan")},
    Name{"stand_north_m", QT_TRANSLATE_NOOP("ClashWords", "metres north on the plan")},
    Name{"substance", QT_TRANSLATE_NOOP("ClashWords", "active substance")},
    Name{"supplier", QT_TRANSLATE_NOOP("ClashWords", "supplier")},
    Name{"treat_line", QT_TRANSLATE_NOOP("ClashWords", "treat line")},
    Name{"turn_date", QT_TRANSLATE_NOOP("ClashWords", "turn date")},
    Name{"visited_on", QT_TRANSLATE_NOOP("ClashWords", "first visit")},
    Name{"withdrawal_days", QT_TRANSLATE_NOOP("ClashWords", "withdrawal days")},
    Name{"words", QT_TRANSLATE_NOOP("ClashWords", "note")},
    Name{"yard_id", QT_TRANSLATE_NOOP("ClashWords", "yard")},
};
static_assert(std::ranges::is_sorted(names, {}, &Name::field));

const Name* find(std::string_view field) {
    const auto found = std::ranges::lower_bound(names, field, {}, &Name::field);
    return found != names.end() && found->field == field ? &*found : nullptr;
}

QString shown(const std::string& text) {
    const QString all = QString::fromStdString(records::cleanText(text)).simplified();
    return all.size() > longestShown
               ? ClashWords::tr("%1…", "a text that goes on").arg(all.left(longestShown))
               : all;
}

QString nameOf(Services& services, records::Kind kind, const std::string& id) {
    if (kind == records::Kind::Yard)
        if (const auto yard = services.store.yard(id))
            return shown(yard->name);
    if (kind == records::Kind::Colony)
        if (const auto colony = services.store.colony(id))
            return shown(colony->label);
    return ClashWords::tr("one that is not known here");
}

QString textValue(Services& services, std::string_view field, const std::string& text) {
    if (text.empty())
        return ClashWords::tr("nothing");
    if (field == "brood")
        return story::broodName(records::broodFrom(text));
    if (field == "floor")
        return story::floorName(records::floorFrom(text));
    if (field == "substance")
        return shown(story::substanceName(services, text).toStdString());
    if (field == "event")
        if (const auto kind = records::eventKindFrom(text))
            return story::kindName(*kind);
    if (const auto day = records::parseIsoDate(text))
        return words::dayAndYear(*day);
    if (const auto day = records::parseMonthDay(text);
        day && (field == "turn_date" || field == "first_wash_from"))
        return words::day(records::dateIn(aLeapYear, *day));
    return shown(text);
}

} // namespace

QString fieldName(std::string_view field) {
    if (const Name* name = find(field))
        return ClashWords::tr(name->words);
    return shown(std::string(field)).replace(u'_', u' ');
}

bool isTyped(std::string_view field) {
    return find(field) != nullptr;
}

QString fieldValue(Services& services, records::Kind kind, std::string_view field,
                   const records::Value& value) {
    if (const auto* text = std::get_if<std::string>(&value)) {
        const auto referred = records::referredKind(kind, field);
        return referred && !text->empty() ? nameOf(services, *referred, *text)
                                          : textValue(services, field, *text);
    }
    if (const auto* whole = std::get_if<std::int64_t>(&value)) {
        if (records::typeOf(kind, field) == records::FieldType::Flag)
            return *whole ? ClashWords::tr("yes") : ClashWords::tr("no");
        if (!field.ends_with("_ms"))
            return QLocale().toString(static_cast<qlonglong>(*whole));
        const records::Moment at{*whole, services.device.clock->utcOffsetMinutes(*whole)};
        return ClashWords::tr("%1, %2", "day, time of day")
            .arg(words::dayAndYear(records::localDate(at)), words::timeOfDay(at));
    }
    if (const auto* real = std::get_if<double>(&value))
        return QLocale().toString(*real, 'g', 8);
    return ClashWords::tr("nothing");
}

} // namespace halfcup::touch::plan
