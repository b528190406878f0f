// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "handbook/substance.h"

namespace halfcup::handbook {

namespace {

// The properties of one substance, by name.
class Properties {
public:
    Properties(const Handbook& handbook, const std::string& subject)
        : m_handbook(handbook)
        , m_subject(subject) {}

    const Entry* find(const char* property) const { return m_handbook.find(m_subject, property); }

    std::string words(const char* property) const {
        const Entry* entry = find(property);
        return entry ? entry->words : std::string();
    }

    std::string neededWords(const char* property) const {
        const std::string text = words(property);
        if (text.empty())
            throw HandbookError("The handbook says nothing about the " + std::string(property) + " of \"" +
                                m_subject + "\".");
        return text;
    }

    // The position of the words in the list; throws where they are none of them.
    int choice(const char* property, std::initializer_list<std::string_view> known) const {
        const std::string text = neededWords(property);
        int index = 0;
        for (const std::string_view one : known) {
            if (one == text)
                return index;
            ++index;
        }
        throw HandbookError("In the handbook, the " + std::string(property) + " of \"" + m_subject +
                            "\" is \"" + text + "\", which is none of the words the program knows.");
    }

private:
    const Handbook& m_handbook;
    const std::string& m_subject;
};

void takeRange(const Entry* entry, std::optional<double>& low, std::optional<double>& high) {
    if (!entry)
        return;
    low = entry->low ? entry->low : entry->value;
    high = entry->high ? entry->high : entry->value;
}

void takeFraction(const Entry* entry, std::optional<double>& low, std::optional<double>& high) {
    takeRange(entry, low, high);
    if (entry && entry->unit == "%") {
        if (low)
            *low /= 100;
        if (high)
            *high /= 100;
    }
}

} // namespace

std::vector<Substance> substances(const Handbook& handbook) {
    std::vector<Substance> all;
    for (const std::string& id : handbook.subjects("substances")) {
        const Properties of(handbook, id);
        Substance one;
        one.id = id;
        one.name = of.neededWords("name");
        one.active = of.neededWords("active");
        one.modeOfAction = of.words("mode-of-action");
        takeRange(of.find("daily-high"), one.dailyHighLowC, one.dailyHighHighC);
        takeRange(of.find("best-high"), one.bestHighLowC, one.bestHighHighC);
        takeRange(of.find("course"), one.courseDaysLow, one.courseDaysHigh);
        if (const Entry* watch = of.find("watch-days"))
            one.watchDays = watch->figure();
        if (const Entry* bees = of.find("least-bees"))
            one.leastBees = bees->figure();
        takeFraction(of.find("efficacy"), one.efficacyLow, one.efficacyHigh);
        takeFraction(of.find("efficacy-brood"), one.efficacyBroodLow, one.efficacyBroodHigh);
        one.supers = static_cast<Allowed>(of.choice("supers", {"no", "yes", "by label"}));
        one.underCappings =
            static_cast<UnderCappings>(of.choice("under-cappings", {"no", "yes", "no, long contact"}));
        one.broodlessOnly = of.choice("broodless", {"no", "yes"}) == 1;
        one.synthetic = of.choice("kind", {"natural", "synthetic"}) == 1;
        one.hazard = of.neededWords("hazard");
        one.resistance = of.words("resistance");
        one.resistanceWeighs =
            !one.resistance.empty() && of.choice("resistance-weight", {"said", "with care"}) == 1;
        all.push_back(std::move(one));
    }
    return all;
}

} // namespace halfcup::handbook
