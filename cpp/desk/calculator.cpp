// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "desk/calculator.h"

#include <filesystem>

namespace halfcup::desk {

Input::Input(const Arguments& arguments, std::istream& standardInput)
    : m_buffer(1 << 16)
    , m_stream(&standardInput) {
    if (arguments.words.empty() || arguments.words[0] == "-")
        return;
    const std::string& name = arguments.words[0];
    m_file.rdbuf()->pubsetbuf(m_buffer.data(), static_cast<std::streamsize>(m_buffer.size()));
    std::error_code ignored;
    if (!std::filesystem::is_directory(name, ignored))
        m_file.open(name, std::ios::binary);
    if (!m_file.is_open())
        throw InputError("The file " + shown(name) + " cannot be opened.");
    m_stream = &m_file;
}

Answers::Answers(Streams& streams, const Table& table, std::vector<std::string> names)
    : m_streams(streams)
    , m_results(names.size()) {
    for (const std::string& other : table.otherNames())
        m_line.add(other);
    for (const std::string& name : names)
        m_line.add(name);
    m_line.add("note");
    write();
}

void Answers::write() {
    m_streams.out << m_line.text() << "\r\n";
    m_line.clear();
}

void Answers::good(const std::vector<std::string>& others, std::string_view cells, std::string_view note) {
    for (const std::string& other : others)
        m_line.add(other);
    m_line.addReady(cells).add(note);
    write();
}

void Answers::bad(const std::vector<std::string>& others, const std::vector<std::string>& first,
                  std::string_view sentence) {
    ++m_bad;
    for (const std::string& other : others)
        m_line.add(other);
    for (const std::string& cell : first)
        m_line.add(cell);
    m_line.addEmpty(m_results - first.size()).add(sentence);
    write();
}

int Answers::finish() {
    if (m_bad == 0)
        return 0;
    m_streams.err << (m_bad == 1 ? "One row" : std::to_string(m_bad) + " rows")
                  << " could not be used; the column \"note\" says why.\n";
    return 1;
}

int answerEachRow(const Arguments& arguments, Streams& streams, std::vector<Column> columns,
                  std::vector<std::string> results, const std::function<Answer(const Table&)>& answer) {
    Input input(arguments, streams.in);
    CsvReader reader(input.stream());
    Table table(reader, std::move(columns));
    Answers answers(streams, table, std::move(results));
    std::unordered_map<std::string, Answer> remembered;
    std::vector<std::string> others;
    std::string key;
    while (table.next()) {
        table.others(others);
        try {
            table.checkRow();
            table.key(key);
            auto known = remembered.find(key);
            if (known == remembered.end()) {
                if (remembered.size() >= kMostRemembered)
                    remembered.clear();
                known = remembered.emplace(key, answer(table)).first;
            }
            answers.good(others, known->second.cells, known->second.note);
        } catch (const RowError& error) {
            answers.bad(others, {}, error.what());
        } catch (const std::exception& error) {
            answers.bad(others, {}, "Row " + std::to_string(table.row()) + ": " + sentence(error));
        }
    }
    return answers.finish();
}

namespace {

// One group's rows as they come, and what went wrong among them.
class Together {
public:
    Together(Answers& answers, Group& group)
        : m_answers(answers)
        , m_group(group) {}

    bool is(std::string_view name) const { return m_open && name == m_name; }

    void begin(std::string name, std::vector<std::string> others) {
        m_open = true;
        m_name = std::move(name);
        m_others = std::move(others);
        m_rows = 0;
        m_trouble.clear();
        m_warning = std::move(m_warningForNext);
        m_warningForNext.clear();
        m_group.clear();
        if (m_names.size() >= kMostNames)
            m_names.clear();
        if (!m_names.insert(std::hash<std::string>()(m_name)).second)
            m_trouble = "Rows of " + shown(m_name) + " stand apart; all rows of one have to stand together.";
    }

    void take(const Table& row) {
        try {
            row.checkRow();
            if (++m_rows > kMostRowsTogether)
                row.complain("more than " + std::to_string(kMostRowsTogether) + " rows belong to " +
                             shown(m_name) + ".");
            if (m_trouble.empty())
                m_group.take(row);
        } catch (const RowError& error) {
            addTrouble(error.what());
        } catch (const std::exception& error) {
            addTrouble("Row " + std::to_string(row.row()) + ": " + sentence(error));
        }
    }

    // A row whose group cannot be told may belong to the one before or the one behind it.
    void warn(const std::string& sentence) {
        if (m_open)
            addNote(m_warning, sentence);
        m_warningForNext = sentence;
    }
    void rowTold() { m_warningForNext.clear(); }

    void end() {
        if (!m_open)
            return;
        m_open = false;
        if (m_trouble.empty()) {
            try {
                Answer answer = m_group.answer();
                addNote(answer.note, m_warning);
                m_answers.good(m_others, CsvLine().add(m_name).addReady(answer.cells).text(), answer.note);
                return;
            } catch (const std::exception& error) {
                m_trouble = sentence(error);
            }
        }
        addNote(m_trouble, m_warning);
        m_answers.bad(m_others, {m_name}, m_trouble);
    }

private:
    void addTrouble(const std::string& sentence) {
        // The first few say enough; a note as long as the file helps nobody.
        if (m_trouble.size() < 400)
            addNote(m_trouble, sentence);
    }

    Answers& m_answers;
    Group& m_group;
    bool m_open = false;
    std::string m_name, m_trouble, m_warning, m_warningForNext;
    std::vector<std::string> m_others;
    std::size_t m_rows = 0;
    std::unordered_set<std::size_t> m_names;
};

} // namespace

int answerTogether(const Arguments& arguments, Streams& streams, std::vector<Column> columns,
                   std::size_t nameColumn, std::vector<std::string> results, Group& group) {
    Input input(arguments, streams.in);
    CsvReader reader(input.stream());
    Table table(reader, std::move(columns));
    Answers answers(streams, table, std::move(results));
    Together together(answers, group);
    std::vector<std::string> others;
    while (table.next()) {
        table.others(others);
        try {
            table.checkRow();
            const std::string name = table.text(nameColumn);
            if (!together.is(name)) {
                together.end();
                together.begin(name, others);
            }
            together.rowTold();
            together.take(table);
        } catch (const RowError& error) {
            answers.bad(others, {}, error.what());
            together.warn("Row " + std::to_string(table.row()) +
                          " beside it could not be read and may belong here.");
        }
    }
    together.end();
    return answers.finish();
}

std::string sentence(const std::exception& error) {
    const std::string said = error.what();
    const bool ours =
        dynamic_cast<const std::domain_error*>(&error) && !said.starts_with("Error in function");
    return ours ? said : "These figures are beyond what can be computed.";
}

void addNote(std::string& note, std::string_view more) {
    if (!note.empty() && !more.empty())
        note.push_back(' ');
    note.append(more);
}

std::string columnHelp(const std::vector<Column>& columns) {
    std::string text = "Columns in:\n";
    for (const Column& column : columns)
        text += std::string("  ") + column.name + std::string(column.needed ? " (needed)" : "") + "\n      " +
                column.meaning + "\n";
    return text;
}

std::string csvHelp() {
    return R"(Reads CSV (RFC 4180) from FILE or standard input. The first row names the columns, in any order. The decimal
mark is a point, an empty cell means the default. Columns it does not know are handed through in front. Writes
CSV. Where a row is no good its results stay empty and "note" says what is wrong, with row (the header is 1) and
column; the program then ends with exit code 1.

)";
}

} // namespace halfcup::desk
