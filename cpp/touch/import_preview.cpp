// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/import_controller.h"

#include "touch/import_words.h"
#include "touch/words.h"

// What the keeper looks at before a table is kept.
namespace halfcup::touch {

namespace {

using exchange::PlannedRow;
using Entry = ChoiceListModel::Entry;
using Fate = PlannedRow::Fate;

constexpr int mostWashes = 5; // as they will be kept
constexpr int mostRows = 100; // with a sentence each, of questions and of refusals
constexpr int mostNames = 12; // of new yards and colonies

/// Some names, and how many more there are.
QString someOf(const QStringList& names) {
    QString some = QStringList(names.mid(0, mostNames)).join(ImportController::tr(", ", "between names"));
    if (names.size() > mostNames)
        some = ImportController::tr("%1 and %n more", nullptr, static_cast<int>(names.size()) - mostNames)
                   .arg(some);
    return some;
}

} // namespace

void ImportController::listPreview() {
    const exchange::OnThisPhone now = here();
    m_remarks.clear();
    for (const exchange::TableSentence& each : exchange::takenForGranted(m_table, m_rules))
        m_remarks.append(importing::said(each));

    const exchange::ImportRecords records = exchange::recordsOf(m_plan, now, m_withQuestions.value_or(true));
    const auto number = [](std::size_t count) { return static_cast<int>(count); };
    QList<Entry> counts;
    const auto add = [&](const QString& count, const QString& note = {}) {
        Entry entry;
        entry.detail = count;
        entry.note = note;
        counts.append(entry);
    };
    add(tr("%n wash(es) to keep", nullptr, number(kept())));
    if (const std::size_t there = m_plan.count(Fate::Here))
        add(tr("%n wash(es) here already", nullptr, number(there)));
    if (!records.yards.empty()) {
        QStringList names;
        for (const records::Yard& yard : records.yards)
            names.append(QString::fromStdString(yard.name));
        add(tr("%n new yard(s)", nullptr, number(records.yards.size())), someOf(names));
    }
    if (!records.colonies.empty()) {
        QStringList names;
        for (const records::Colony& colony : records.colonies)
            names.append(QString::fromStdString(colony.label));
        add(tr("%n new colony(ies)", nullptr, number(records.colonies.size())), someOf(names));
    }
    if (const std::size_t asked = m_plan.count(Fate::Question))
        add(tr("%n row(s) in question", nullptr, number(asked)));
    if (const std::size_t refused = m_plan.count(Fate::Refused))
        add(tr("%n row(s) refused", nullptr, number(refused)),
            tr("They stay in the table; nothing of them is kept."));
    m_counts.setEntries(counts);
    listRows();
}

void ImportController::listRows() {
    const exchange::OnThisPhone now = here();
    QList<Entry> washes, questions, refused;
    int moreQuestions = 0, moreRefused = 0;
    for (const PlannedRow& row : m_plan.rows) {
        Entry entry;
        entry.key = QString::number(row.line);
        const bool asked = row.fate == Fate::Question;
        if (asked || row.fate == Fate::Refused) {
            entry.title = asked ? tr("Line %1, colony %2", "line of the file")
                                      .arg(row.line)
                                      .arg(QString::fromStdString(row.colony))
                                : tr("Line %1", "line of the file").arg(row.line);
            entry.detail = importing::said(row.sentence);
            entry.detail[0] = entry.detail[0].toUpper();
            auto& list = asked ? questions : refused;
            int& more = asked ? moreQuestions : moreRefused;
            list.size() < mostRows ? list.append(entry) : static_cast<void>(++more);
        } else if (row.fate == Fate::New && washes.size() < mostWashes) {
            const records::Sample sample = exchange::judged(row, now);
            entry.title = tr("Colony %1, %2", "colony, yard")
                              .arg(QString::fromStdString(row.colony), QString::fromStdString(row.yard));
            entry.detail = importing::washLine(sample);
            entry.note = importing::loadLine(sample);
            washes.append(entry);
        }
    }
    m_washes.setEntries(washes);
    m_questions.setEntries(questions);
    m_refused.setEntries(refused);
    m_moreQuestions = moreQuestions ? tr("and %n more row(s)", nullptr, moreQuestions) : QString();
    m_moreRefused = moreRefused ? tr("and %n more row(s)", nullptr, moreRefused) : QString();
    QList<Entry> decisions;
    if (!questions.isEmpty())
        for (const bool keep : {true, false}) {
            Entry entry;
            entry.key = keep ? QStringLiteral("keep") : QStringLiteral("leave");
            entry.title = keep ? tr("Keep them") : tr("Leave them out");
            entry.chosen = m_withQuestions == keep;
            decisions.append(entry);
        }
    m_decisions.setEntries(decisions);
}

} // namespace halfcup::touch
