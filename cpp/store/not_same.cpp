// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "store/not_same.h"

#include <algorithm>
#include <sstream>

namespace halfcup::store {

namespace {

constexpr auto settingName = "not_same"; // a pair of ids a line

} // namespace

std::set<NotSame::Pair> NotSame::all() {
    std::set<Pair> pairs;
    const records::Value kept = m_store.setting(settingName);
    const auto* text = std::get_if<std::string>(&kept);
    std::istringstream lines(text ? *text : std::string());
    Pair pair;
    while (lines >> pair.first >> pair.second)
        if (records::isRecordId(pair.first) && records::isRecordId(pair.second))
            pairs.insert(pair);
    return pairs;
}

void NotSame::add(const records::RecordId& one, const records::RecordId& other) {
    std::set<Pair> pairs = all();
    if (one == other || !pairs.insert(std::minmax(one, other)).second)
        return;
    std::string text;
    for (const auto& [first, second] : pairs)
        text.append(first).append(" ").append(second).append("\n");
    m_store.setSetting(settingName, text);
}

} // namespace halfcup::store
