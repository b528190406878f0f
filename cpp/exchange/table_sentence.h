// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <exception>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace halfcup::exchange {

/// Marks a text about a table for the translators (context "Table"). Does nothing.
constexpr const char* tableText(const char* text) {
    return text;
}

/// A sentence about a table, decided here and said in the keeper's language above: an English template with
/// %1 to %9, marked with tableText(), and what goes there.
struct TableSentence {
    std::string text;
    std::vector<std::string> arguments;

    [[nodiscard]] bool empty() const { return text.empty(); }
    friend bool operator==(const TableSentence&, const TableSentence&) = default;
};

/// The template with its arguments put in, each once: an argument with %2 in it stays as it is.
[[nodiscard]] std::string filledIn(std::string_view text, const std::vector<std::string>& arguments);
[[nodiscard]] std::string inEnglish(const TableSentence& sentence);

/// A cell's text for a sentence: cut after 40 bytes, nothing that could break a line or turn it around
/// (control characters, marks for right-to-left writing).
[[nodiscard]] std::string shownCell(std::string_view text);

/// The whole table cannot be used.
class TableError : public std::exception {
public:
    explicit TableError(TableSentence sentence)
        : m_sentence(std::move(sentence))
        , m_english(inEnglish(m_sentence)) {}

    [[nodiscard]] const TableSentence& sentence() const { return m_sentence; }
    [[nodiscard]] const char* what() const noexcept override { return m_english.c_str(); }

private:
    TableSentence m_sentence;
    std::string m_english;
};

} // namespace halfcup::exchange
