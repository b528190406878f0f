// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "records/count.h"

namespace halfcup::records {

std::string_view nameOf(CountEvent::Change change) {
    switch (change) {
    case CountEvent::Change::Typed:
        return "typed";
    case CountEvent::Change::Undo:
        return "undo";
    case CountEvent::Change::Tap:
        break;
    }
    return "tap";
}

std::optional<CountEvent::Change> changeFrom(std::string_view name) {
    for (const auto change : {CountEvent::Change::Tap, CountEvent::Change::Typed, CountEvent::Change::Undo})
        if (nameOf(change) == name)
            return change;
    return std::nullopt;
}

void CountTally::add(const CountEvent& event) {
    switch (event.change) {
    case CountEvent::Change::Tap:
        m_done.push_back(m_mites);
        ++m_mites;
        m_touched = true;
        break;
    case CountEvent::Change::Typed:
        m_done.push_back(m_mites);
        m_mites = event.typed;
        m_touched = true;
        break;
    case CountEvent::Change::Undo:
        if (!m_done.empty()) {
            m_mites = m_done.back();
            m_done.pop_back();
        }
        break;
    }
}

CountTally tally(const std::vector<CountEvent>& events, int rinse) {
    CountTally result;
    for (const CountEvent& event : events)
        if (event.rinse == rinse)
            result.add(event);
    return result;
}

} // namespace halfcup::records
