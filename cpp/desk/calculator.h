// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// What the calculators share: opening the input, handing unknown columns through, writing answers and
// complaints.
#include "desk/csv_line.h"
#include "desk/table.h"
#include "desk/verb.h"

#include <fstream>
#include <unordered_map>
#include <unordered_set>

namespace halfcup::desk {

// The FILE argument, or stdin where there is none or "-". Throws InputError where the file cannot be opened.
class Input {
public:
    Input(const Arguments& arguments, std::istream& standardInput);
    std::istream& stream() { return *m_stream; }

private:
    std::vector<char> m_buffer;
    std::ifstream m_file;
    std::istream* m_stream;
};

// Writes the rows of the answer: the columns handed through, the result columns, the note.
class Answers {
public:
    // names: result columns without the note. Writes the header.
    Answers(Streams& streams, const Table& table, std::vector<std::string> names);

    // cells: all result cells, ready made (CsvLine::text()). others: cells handed through.
    void good(const std::vector<std::string>& others, std::string_view cells, std::string_view note);
    // Empty results but for the first cells given (the name of a group), and the sentence as note.
    void bad(const std::vector<std::string>& others, const std::vector<std::string>& first,
             std::string_view sentence);
    // Something went wrong that a row of its own cannot show.
    void countBad() { ++m_bad; }
    // The exit code, after a sentence on stderr if there were bad rows.
    int finish();

private:
    void write();
    Streams& m_streams;
    std::size_t m_results;
    std::size_t m_bad = 0;
    CsvLine m_line;
};

// The answer to one row: its result cells and its note.
struct Answer {
    std::string cells;
    std::string note;
};

// A verb that answers each row by itself. The same cells get the same answer without computing it again, as
// long as they are among the last kMostRemembered different ones. `answer` throws RowError or
// std::domain_error.
inline constexpr std::size_t kMostRemembered = 1 << 14;
int answerEachRow(const Arguments& arguments, Streams& streams, std::vector<Column> columns,
                  std::vector<std::string> results, const std::function<Answer(const Table&)>& answer);

// A verb that answers rows with the same name in one column together; they have to stand together. Memory:
// the rows of one group, and the names of the last kMostNames groups to see that none comes back.
inline constexpr std::size_t kMostNames = 100000;
inline constexpr std::size_t kMostRowsTogether = 10000;
class Group {
public:
    virtual ~Group() = default;
    virtual void clear() = 0;
    virtual void take(const Table& row) = 0; // throws RowError or what mites/ throws
    virtual Answer answer() = 0;             // without the name; throws what mites/ throws
};
int answerTogether(const Arguments& arguments, Streams& streams, std::vector<Column> columns,
                   std::size_t nameColumn, std::vector<std::string> results, Group& group);

// What an error says, as a sentence for people: a library's own words say nothing to a keeper.
std::string sentence(const std::exception& error);

// Another sentence behind those there are.
void addNote(std::string& note, std::string_view more);

// Lines of --help for the columns.
std::string columnHelp(const std::vector<Column>& columns);
std::string csvHelp();

} // namespace halfcup::desk
