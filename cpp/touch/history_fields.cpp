// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/history_fields.h"

#include "records/field_access.h"
#include "records/sample.h"
#include "touch/clash_words.h"
#include "touch/story.h"
#include "touch/words.h"

#include <QCoreApplication>
#include <QLocale>

namespace halfcup::touch {

using records::Fields;
using records::Kind;

namespace {

class HistoryWords {
    Q_DECLARE_TR_FUNCTIONS(HistoryWords)
};

constexpr bool putBack = true;

QString placeOf(const Fields& values) {
    const auto latitude = records::realIn(values, "latitude_deg");
    const auto longitude = records::realIn(values, "longitude_deg");
    if (!latitude || !longitude)
        return HistoryWords::tr("no place");
    return words::coordinates({*latitude, *longitude, records::realIn(values, "position_accuracy_m")});
}

QString standOf(const Fields& values) {
    const auto east = records::realIn(values, "stand_east_m");
    const auto north = records::realIn(values, "stand_north_m");
    if (!east || !north)
        return HistoryWords::tr("not put there");
    return HistoryWords::tr("%1 m east, %2 m north")
        .arg(QLocale().toString(*east, 'f', 1), QLocale().toString(*north, 'f', 1));
}

QString queenOf(const std::string& word) {
    if (word == records::nameOf(records::Queen::SeenAndSafe))
        return HistoryWords::tr("seen and safe");
    if (word == records::nameOf(records::Queen::NotSeen))
        return HistoryWords::tr("not seen");
    return HistoryWords::tr("not asked");
}

} // namespace

const std::vector<KnownField>& knownFields(Kind kind) {
    static const std::vector<KnownField> yard{
        {{"removed"}, putBack, true},
        {{"name"}, putBack, false},
        {{"latitude_deg", "longitude_deg", "position_accuracy_m"}, putBack, true},
        {{"registration_number"}, putBack, true},
        {{"treat_line", "treat_line_source"}, putBack, false},
        {{"own_line"}, putBack, true},
        {{"line_region"}, putBack, true},
        {{"turn_date"}, putBack, true},
        {{"first_wash_from"}, putBack, true},
        {{"same_as"}, false, true},
    };
    static const std::vector<KnownField> colony{
        {{"removed"}, putBack, true},
        {{"label"}, putBack, false},
        {{"note"}, putBack, true},
        {{"yard_id"}, false, true},
        {{"stand_east_m", "stand_north_m"}, putBack, true},
        {{"same_as"}, false, true},
    };
    static const std::vector<KnownField> sample{
        {{"removed"}, putBack, true},          {{"note"}, putBack, true}, {{"mites"}, false, true},
        {{"mites_second_rinse"}, false, true}, {{"queen"}, false, true},  {{"jar"}, false, true},
        {{"colony_id"}, false, true},
    };
    static const std::vector<KnownField> treatment{
        {{"removed"}, putBack, true},       {{"product"}, putBack, false},   {{"substance"}, false, true},
        {{"batch"}, putBack, true},         {{"supplier"}, putBack, true},   {{"proof"}, putBack, true},
        {{"quantity"}, putBack, true},      {{"prescriber"}, putBack, true}, {{"done_by"}, putBack, true},
        {{"note"}, putBack, true},          {{"expiry"}, false, true},       {{"first_day"}, false, true},
        {{"last_day"}, false, true},        {{"removal_due"}, false, true},  {{"removed_on"}, false, true},
        {{"withdrawal_days"}, false, true},
    };
    static const std::vector<KnownField> none;
    switch (kind) {
    case Kind::Yard:
        return yard;
    case Kind::Colony:
        return colony;
    case Kind::Sample:
        return sample;
    case Kind::Treatment:
        return treatment;
    case Kind::Event:
    case Kind::Treated:
    case Kind::ScoopCount:
    case Kind::Round:
        break;
    }
    return none;
}

QString titleOf(const KnownField& known) {
    const std::string& field = known.fields.front();
    if (field == "latitude_deg")
        return HistoryWords::tr("Place");
    if (field == "stand_east_m")
        return HistoryWords::tr("Place on the plan");
    if (field == "removed")
        return HistoryWords::tr("The whole record");
    return story::capitalised(plan::fieldName(field));
}

QString valueOf(Services& services, Kind kind, const KnownField& known, const Fields& values) {
    const std::string& field = known.fields.front();
    if (field == "latitude_deg")
        return placeOf(values);
    if (field == "stand_east_m")
        return standOf(values);
    if (field == "removed")
        return records::flagIn(values, field) ? HistoryWords::tr("removed")
                                              : HistoryWords::tr("in the lists");
    const std::string text = records::textIn(values, field).value_or("");
    if (field == "queen")
        return queenOf(text);
    if (field == "same_as" && text.empty())
        return HistoryWords::tr("none, it stands by itself");
    if (const auto day = records::parseMonthDay(text);
        day && (field == "turn_date" || field == "first_wash_from"))
        return words::day(records::dateIn(2024, *day)); // a leap year: every day of a year is in it
    const auto value = values.find(field);
    return plan::fieldValue(services, kind, field, value == values.end() ? records::Value{} : value->second);
}

} // namespace halfcup::touch
