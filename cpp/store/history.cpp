// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "store/history.h"

#include "records/clean_text.h"
#include "store/sqlite_errors.h"

#include <algorithm>

namespace halfcup::store {

using namespace records;

std::vector<History::State> History::of(Kind kind, const RecordId& id,
                                        const std::vector<std::string>& fields) {
    std::vector<State> states;
    Fields now;
    for (const PastValue& past : m_store.history(kind, id)) { // oldest first
        if (std::ranges::find(fields, past.field) == fields.end() || !typeOf(kind, past.field))
            continue;
        Value value = cleanValue(past.value); // as a row is made of it
        now[past.field] = fits(value, kind, past.field) ? std::move(value) : Value{};
        Fields shown;
        for (const auto& [field, each] : now)
            if (!std::holds_alternative<std::monostate>(each))
                shown[field] = each;
        const bool sameMoment = !states.empty() && states.back().stamp == past.stamp;
        if (sameMoment)
            states.back().values = std::move(shown);
        else
            states.push_back({std::move(shown), past.stamp});
    }
    const auto same = [](const State& a, const State& b) { return a.values == b.values; };
    states.erase(std::unique(states.begin(), states.end(), same), states.end());
    return states;
}

bool History::putBack(Kind kind, const RecordId& id, const Fields& values) {
    bool changed = false;
    m_store.inOneTransaction([&] {
        const auto row = m_store.table(kind).find(id);
        if (!row)
            return;
        Fields differing;
        for (const auto& [field, value] : values) {
            if (!fits(value, kind, field) || referredKind(kind, field))
                return;
            const auto there = row->fields.find(field);
            if (there == row->fields.end() || there->second != cleanValue(value))
                differing[field] = value;
        }
        if (differing.empty())
            return;
        m_store.write(kind, id, differing);
        changed = true;
    });
    return changed;
}

std::string History::thisPhone() {
    const Value device = m_store.setting("device_id");
    const auto* text = std::get_if<std::string>(&device);
    return text ? *text : std::string();
}

} // namespace halfcup::store
