// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// Which column of a table of washes holds what.
namespace halfcup::exchange {

/// What a wash is made from. The last four are only in tables that this app wrote itself.
enum class WashField {
    Day,
    Time,
    Yard,
    Colony,
    Method,
    Bees,        // how many
    ScoopMl,     // or the volume they were scooped with
    ScoopCups,   // in US cups
    Mites,       // counted
    MitesPer100, // or worked out by someone: the count is taken back out of it
    Note,
    BeesCv,
    SecondRinse,
    SampleId,
    Invented,
};

inline constexpr std::array allWashFields{
    WashField::Day,  WashField::Time,    WashField::Yard,        WashField::Colony,   WashField::Method,
    WashField::Bees, WashField::ScoopMl, WashField::ScoopCups,   WashField::Mites,    WashField::MitesPer100,
    WashField::Note, WashField::BeesCv,  WashField::SecondRinse, WashField::SampleId, WashField::Invented,
};
/// How many of them a keeper is asked about, from the front.
inline constexpr std::size_t askedFields = 11;

/// "day", "time", "yard" ...: the name on the command line and in tests.
[[nodiscard]] std::string_view nameOf(WashField field);
[[nodiscard]] std::optional<WashField> washFieldFrom(std::string_view name);
/// What a person calls it, marked with tableText(): "Day", "Mites per 100 bees".
[[nodiscard]] const char* titleOf(WashField field);

/// For each field the column that holds it, from 0; nothing where no column does.
class ColumnMatch {
public:
    [[nodiscard]] std::optional<std::size_t> operator[](WashField field) const {
        return m_columns[static_cast<std::size_t>(field)];
    }
    [[nodiscard]] bool has(WashField field) const { return (*this)[field].has_value(); }
    /// A column holds one thing: it is taken away from the field that had it.
    void set(WashField field, std::optional<std::size_t> column);

    friend bool operator==(const ColumnMatch&, const ColumnMatch&) = default;

private:
    std::array<std::optional<std::size_t>, allWashFields.size()> m_columns;
};

/// True for the names of the table that this app writes of its samples, in whatever order.
[[nodiscard]] bool isOwnTable(const std::vector<std::string>& names);

/// A first guess by the names of the columns, in the trade's words of English, Spanish, French and German
/// (from memory; the keeper looks at it and can change each). A table of this app's own matches itself.
[[nodiscard]] ColumnMatch guessedMatch(const std::vector<std::string>& names);

} // namespace halfcup::exchange
