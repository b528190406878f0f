// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/import_controller.h"

#include "exchange/keep_import.h"
#include "season/lines.h"
#include "touch/found_files.h"
#include "touch/import_words.h"
#include "touch/words.h"

#include <QDir>
#include <QFileInfo>

#include <algorithm>

namespace halfcup::touch {

namespace {

using exchange::DayOrder;
using exchange::PlannedRow;
using exchange::WashField;
using Entry = ChoiceListModel::Entry;
using Fate = PlannedRow::Fate;

constexpr qsizetype mostFiles = 50;

QStringList tableEndings() {
    return {QStringLiteral(".csv"), QStringLiteral(".tsv"), QStringLiteral(".txt")};
}

Entry entry(const QString& key, const QString& title, const QString& detail = {}, const QString& note = {}) {
    Entry made;
    made.key = key;
    made.title = title;
    made.detail = detail;
    made.note = note;
    return made;
}

QString keyOf(WashField field) {
    const std::string_view name = exchange::nameOf(field);
    return QString::fromLatin1(name.data(), static_cast<qsizetype>(name.size()));
}

} // namespace

ImportController::ImportController(Services& services, QObject* parent)
    : QObject(parent)
    , m_services(services) {
    connect(services.device.files.get(), &device::FileHandover::worksChanged, this,
            &ImportController::changed);
}

QString ImportController::title() const {
    switch (m_step) {
    case Files:
        return tr("Earlier washes");
    case Columns:
        return tr("Which column is what?");
    case Preview:
        return tr("This would be kept");
    case Done:
        break;
    }
    return tr("Earlier washes");
}

QString ImportController::mainAction() const {
    switch (m_step) {
    case Files:
        return mainActionOfFiles(m_services);
    case Columns:
        return tr("Look at the washes");
    case Preview:
        return kept() == 0 ? QString() : tr("Keep %n wash(es)", nullptr, static_cast<int>(kept()));
    case Done:
        break;
    }
    return tr("Done");
}

QString ImportController::filesLine() const {
    if (m_files.count() > 0)
        return tr(
            "A table of washes, saved as CSV or text by any spreadsheet. Its first row names the columns.");
    if (!m_services.device.folders->areSeen())
        return tr(
            "Choose a table of washes, saved as CSV or text by any spreadsheet. Its first row names the "
            "columns.");
    return tr("No table was found. Save it as CSV and put it into one of these folders: %1.")
        .arg(m_folders.isEmpty() ? tr("none on this phone") : m_folders.join(tr(", ", "between folders")));
}

void ImportController::begin() {
    m_step = Files;
    m_problem.clear();
    m_fileName.clear();
    m_table = {};
    m_plan = {};
    listFiles();
    emit changed();
}

void ImportController::listFiles() {
    if (m_folders.isEmpty())
        m_folders = foldersOfFiles(m_services);
    QStringList patterns;
    for (const QString& ending : tableEndings())
        patterns.append(u'*' + ending);
    QList<Entry> entries;
    for (const QFileInfo& file : newestFiles(m_folders, patterns, mostFiles))
        entries.append(entry(file.absoluteFilePath(), file.fileName(), ageAndSize(m_services, file),
                             QDir::toNativeSeparators(file.absolutePath())));
    m_files.setEntries(entries);
}

QString ImportController::chooser() const {
    return m_step == Files ? chooserOfFiles(m_services, m_files.count() > 0) : QString();
}

void ImportController::chooseFile() {
    m_services.device.files->chooseFile(tr("A table of earlier washes"), tableEndings());
}

bool ImportController::openFile(const QString& path) {
    try {
        exchange::TextTable table = exchange::readTableFile(path);
        m_table = std::move(table);
    } catch (const exchange::TableError& error) {
        m_problem = importing::said(error.sentence());
        m_step = Files;
        emit changed();
        return false;
    }
    m_fileName = QFileInfo(path).fileName();
    m_problem.clear();
    m_rules = {};
    m_rules.match = exchange::guessedMatch(m_table.names);
    m_rules.today = m_services.today();
    m_field.reset();
    m_step = Columns;
    listMatch();
    emit changed();
    return true;
}

bool ImportController::asksYard() const {
    return m_step == Columns && !m_rules.match.has(WashField::Yard);
}

QString ImportController::fieldTitle() const {
    return m_field ? importing::title(*m_field) : QString();
}

void ImportController::listMatch() {
    QList<Entry> fields;
    for (std::size_t i = 0; i < exchange::allWashFields.size(); ++i) {
        const WashField field = exchange::allWashFields[i];
        const auto column = m_rules.match[field];
        if (i >= exchange::askedFields && !column)
            continue;
        fields.append(entry(keyOf(field), importing::title(field),
                            column ? importing::columnName(m_table, *column) : tr("no column"),
                            column ? importing::example(m_table, *column) : QString()));
    }
    m_fields.setEntries(fields);

    QList<Entry> yards;
    m_services.kept([&] {
        for (const records::Yard& yard : m_services.store.yards())
            if (!yard.demo)
                yards.append(entry(QString::fromStdString(yard.name), QString::fromStdString(yard.name)));
    });
    for (Entry& yard : yards)
        yard.chosen = yard.key == yardForAll();
    m_yards.setEntries(yards);

    const bool asks = m_rules.order || (exchange::missingFor(m_table, m_rules).dayOrder);
    m_orderQuestion.clear();
    if (asks) {
        exchange::WashRules open = m_rules;
        open.order.reset();
        m_orderQuestion = importing::said(exchange::missingFor(m_table, open).sentence);
    }
    QList<Entry> orders;
    if (asks) {
        orders.append(entry(QStringLiteral("d.m.y"), tr("Day first")));
        orders.last().chosen = m_rules.order == DayOrder::DayMonthYear;
        orders.append(entry(QStringLiteral("m/d/y"), tr("Month first")));
        orders.last().chosen = m_rules.order == DayOrder::MonthDayYear;
    }
    m_orders.setEntries(orders);
}

void ImportController::pickField(const QString& key) {
    m_field = exchange::washFieldFrom(key.toStdString());
    QList<Entry> columns;
    if (m_field) {
        const auto chosen = m_rules.match[*m_field];
        columns.append(entry(QStringLiteral("none"), tr("No column")));
        columns.last().chosen = !chosen;
        for (std::size_t i = 0; i < m_table.names.size(); ++i) {
            columns.append(
                entry(QString::number(i), importing::columnName(m_table, i), importing::example(m_table, i)));
            columns.last().chosen = chosen == i;
        }
    }
    m_columns.setEntries(columns);
    emit changed();
}

void ImportController::pickColumn(const QString& key) {
    if (!m_field)
        return;
    bool isNumber = false;
    const qulonglong column = key.toULongLong(&isNumber);
    m_rules.match.set(*m_field, isNumber && column < m_table.names.size() ? std::optional<std::size_t>(column)
                                                                          : std::nullopt);
    if (*m_field == WashField::Day)
        m_rules.order.reset(); // another column, another hand
    m_field.reset();
    m_problem.clear();
    listMatch();
    emit changed();
}

void ImportController::typeYard(const QString& name) {
    if (name.trimmed() == yardForAll())
        return;
    m_rules.yardForAll = name.trimmed().toStdString();
    m_problem.clear();
    listMatch();
    emit changed();
}

void ImportController::pickOrder(const QString& key) {
    m_rules.order = key == QLatin1String("m/d/y") ? DayOrder::MonthDayYear : DayOrder::DayMonthYear;
    m_problem.clear();
    listMatch();
    emit changed();
}

exchange::OnThisPhone ImportController::here() {
    return exchange::onThisPhone(m_services.store,
                                 [this](const records::Yard& yard, const records::Date& day) {
                                     return season::linesOn(yard, day, m_services.handbook());
                                 });
}

void ImportController::look() {
    if (const exchange::Missing missing = exchange::missingFor(m_table, m_rules); !missing.sentence.empty()) {
        m_problem = importing::said(missing.sentence);
        emit changed();
        return;
    }
    m_problem.clear();
    const std::string source = tr("From a table: %1", "a file's name").arg(m_fileName).toStdString();
    if (m_services.kept(
            [&] { m_plan = exchange::planImport(exchange::readWashes(m_table, m_rules), here(), source); })) {
        m_withQuestions.reset();
        m_step = Preview;
        listPreview();
    }
    emit changed();
}

std::size_t ImportController::kept() const {
    return m_plan.count(Fate::New) + (m_withQuestions.value_or(true) ? m_plan.count(Fate::Question) : 0);
}

void ImportController::decide(const QString& key) {
    m_withQuestions = key == QLatin1String("keep");
    m_problem.clear();
    listPreview();
    emit changed();
}

void ImportController::keep() {
    if (m_plan.count(Fate::Question) > 0 && !m_withQuestions) {
        m_problem = tr("First say what becomes of the rows in question: keep them, or leave them out.");
        emit changed();
        return;
    }
    exchange::ImportRecords records;
    const bool done = m_services.kept([&] {
        const exchange::OnThisPhone now = here();
        records = exchange::recordsOf(m_plan, now, m_withQuestions.value_or(false));
        exchange::judge(records, now);
        exchange::keepImport(m_services.store, records);
    });
    if (done) {
        m_problem.clear();
        m_result = tr("%n wash(es) kept. Taking the same table in again adds nothing.", nullptr,
                      static_cast<int>(records.samples.size()));
        m_step = Done;
        m_table = {};
        m_plan = {};
    }
    emit changed();
    if (done)
        emit recordsChanged();
}

void ImportController::act() {
    switch (m_step) {
    case Files:
        if (m_services.device.folders->areSeen())
            begin();
        else
            chooseFile();
        break;
    case Columns:
        look();
        break;
    case Preview:
        keep();
        break;
    case Done:
        emit homeWanted();
        break;
    }
}

void ImportController::back() {
    m_problem.clear();
    switch (m_step) {
    case Columns:
        begin();
        return;
    case Preview:
        m_step = Columns;
        listMatch();
        emit changed();
        return;
    case Files:
        emit backWanted();
        return;
    case Done:
        emit homeWanted();
        return;
    }
}

} // namespace halfcup::touch
