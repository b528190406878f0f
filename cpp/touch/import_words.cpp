// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/import_words.h"

#include "touch/words.h"

#include <QCoreApplication>

namespace halfcup::touch::importing {

namespace {

constexpr auto context = "Table";

class Importing {
    Q_DECLARE_TR_FUNCTIONS(Importing)
};

} // namespace

QString said(const exchange::TableSentence& sentence) {
    const QString text = QCoreApplication::translate(context, sentence.text.c_str());
    std::vector<std::string> arguments;
    for (const std::string& each : sentence.arguments) // names of fields are among them
        arguments.push_back(QCoreApplication::translate(context, each.c_str()).toStdString());
    return QString::fromStdString(exchange::filledIn(text.toStdString(), arguments));
}

QString title(exchange::WashField field) {
    return QCoreApplication::translate(context, exchange::titleOf(field));
}

QString columnName(const exchange::TextTable& table, std::size_t column) {
    const std::string& name = table.names.at(column);
    return name.empty() ? Importing::tr("Column %1, without a name").arg(column + 1)
                        : QString::fromStdString(exchange::shownCell(name));
}

QString example(const exchange::TextTable& table, std::size_t column) {
    for (const exchange::TableRow& row : table.rows)
        if (const std::string_view cell = row.cell(column); !cell.empty())
            return Importing::tr("for example %1").arg(QString::fromStdString(exchange::shownCell(cell)));
    return {};
}

QString washLine(const records::Sample& sample) {
    const records::Date day = records::localDate({sample.startedAtMs, sample.utcOffsetMinutes});
    return Importing::tr("%1: %2 on %3, %4", "day, mites, bees, method")
        .arg(words::dayAndYear(day), words::mites(sample.answer->mites), words::bees(sample.scoop.beesMean),
             words::method(QString::fromStdString(sample.method)));
}

QString loadLine(const records::Sample& judged) {
    const records::Answer& answer = *judged.answer;
    return Importing::tr("%1: %2 per 100 (%3)", "standing, load, its range")
        .arg(words::standing(words::headlineOf(judged)), words::load(answer.mites == 0 ? 0 : answer.loadQ50),
             words::loadRange(answer));
}

} // namespace halfcup::touch::importing
