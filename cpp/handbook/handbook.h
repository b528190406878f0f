// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// The published values the app shows or computes with, each with where it comes from
// (assets/handbook/*.json).
//
// A value is read once at start and never changes. Its figures are in the unit the entry names; loads are in
// mites per 100 adult bees, temperatures in degrees C, times in days. An entry holds one figure (value), a
// range (low and high, either end may be open) or words where the source gives no figure ("by label"), never
// nothing. Where sources disagree there are several entries; the app shows them all and starts from the
// cautious one.
//
// Errors: a file that cannot be used is refused as a whole with HandbookError, whose text names the file, the
// entry and the field in one sentence. A handbook with a hole is worse than none: a keeper acts on it.
// No Qt, no file access: the caller hands over the texts.
#include <functional>
#include <map>
#include <optional>
#include <span>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

namespace halfcup::handbook {

// How well a value is known; shown beside every value.
enum class Mark {
    Published,      // the source itself, or its summary, was read
    Quoted,         // read in a second source that quotes it
    FromMemory,     // published, but not read again: to be checked before it decides anything
    CommonPractice, // beekeepers do so; nobody measured it
    Computed,       // follows from the inputs or the data the source names
    OwnChoice       // a choice of this project, said to be one
};
std::string_view markName(Mark mark); // as in the files: "published", "quoted", "from memory", ...

struct Entry {
    std::string id;    // unique over all files, e.g. "trade-rule"
    std::string topic; // e.g. "lines"
    std::string title; // a few plain words
    std::optional<double> value, low, high;
    std::string words; // where the source gives words, not figures, and empty otherwise
    std::string unit;  // e.g. "mites per 100 bees"; "words" where there are only words
    std::string source;
    std::optional<int> year; // of the source; nothing where it bears no date
    Mark mark = Mark::CommonPractice;
    std::string note; // limits of the value, may be empty

    // What it belongs to and which of its properties it is, for topics that are tables ("substances": the
    // active substance "formic-acid" and "daily-high"). Empty elsewhere.
    std::string subject, property;

    // The one figure to start from: value, otherwise the middle of the range, otherwise its only end.
    std::optional<double> figure() const;
};

class HandbookError : public std::runtime_error {
public:
    using std::runtime_error::runtime_error;
};

class Handbook {
public:
    // One file's text each. In errors a file is called by its topic, or by its place in the list.
    static Handbook fromTexts(std::span<const std::string_view> jsonTexts);

    // Says in another language what is only shown: titles, sources, notes, and words that no rule reads (a
    // rule reads "by label"). `said` gives the text itself where it knows no other.
    void sayIn(const std::function<std::string(const std::string&)>& said);

    const Entry* find(std::string_view id) const; // nullptr where there is none
    // The same where the program cannot do without: throws HandbookError naming the id.
    const Entry& at(std::string_view id) const;
    double figureAt(std::string_view id) const;                      // at(id).figure(), which has to be there
    std::vector<const Entry*> topic(std::string_view name) const;    // in the order of the file
    std::vector<const Entry*> about(std::string_view subject) const; // all properties of a subject
    const Entry* find(std::string_view subject, std::string_view property) const;
    std::vector<std::string> topics() const;              // in the order read
    std::string topicTitle(std::string_view topic) const; // plain words for a heading; empty where unknown
    std::vector<std::string> subjects(std::string_view topic) const; // in the order of the file
    std::size_t size() const { return m_entries.size(); }

private:
    struct Topic {
        std::string name, title;
    };
    std::vector<Topic> m_topics;
    std::vector<Entry> m_entries;
    std::map<std::string, std::size_t, std::less<>> m_byId;
};

} // namespace halfcup::handbook
