// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/export_controller.h"

#include "season/bee_year.h"
#include "season/natural_order.h"
#include "touch/export_file.h"

#include <QDir>
#include <QLocale>

#include <algorithm>
#include <array>

namespace halfcup::touch {

namespace {

constexpr std::array kindKeys{"samples", "counts", "treatments", "map", "calendar", "report"};
const QLatin1String colonyKey("colony"), yardKey("yard"), seasonKey("season"); // scopes
const QLatin1String thisSeason("this"), lastSeason("last"), allYears("all");

ChoiceListModel::Entry entry(const QString& key, const QString& title, const QString& detail,
                             const QString& chosen) {
    ChoiceListModel::Entry made;
    made.key = key;
    made.title = title;
    made.detail = detail;
    made.chosen = key == chosen;
    return made;
}

/// Letters and digits of a name for the name of a file, short.
QString forFileName(const QString& text) {
    QString name;
    for (const QChar c : text.left(40))
        name += c.isLetterOrNumber() ? c : QChar(u'-');
    return name;
}

/// Where office paper is Letter and not A4 [common practice, no source].
bool usesLetter(QLocale::Territory where) {
    return where == QLocale::UnitedStates || where == QLocale::Canada || where == QLocale::Mexico;
}

} // namespace

ExportController::ExportController(Services& services, QObject* parent)
    : QObject(parent)
    , m_services(services)
    , m_scope(yardKey)
    , m_year(thisSeason)
    , m_letter(usesLetter(QLocale().territory())) {}

void ExportController::show(const QString& yardId) {
    m_yardId = yardId;
    m_colonyId.clear();
    m_result.clear();
    m_failed = false;
    m_exact = false;
    m_demo = false;
    m_services.kept([&] {
        for (const records::Yard& yard : m_services.store.yards())
            m_demo = m_demo || yard.demo;
    });
    list();
}

void ExportController::list() {
    const QString kind = QLatin1String(kindKeys[m_kind]);
    m_kinds.setEntries(
        {entry(QStringLiteral("samples"), tr("Washes"), tr("a table (CSV), a row a wash"), kind),
         entry(QStringLiteral("counts"), tr("Counts"), tr("a table (CSV), a row a touch"), kind),
         entry(QStringLiteral("treatments"), tr("Treatments"), tr("a table (CSV), all the law asks for"),
               kind),
         entry(QStringLiteral("map"), tr("Map"), tr("yards and washes (GeoJSON)"), kind),
         entry(QStringLiteral("calendar"), tr("Calendar"), tr("the year ahead (iCalendar)"), kind),
         entry(QStringLiteral("report"), tr("Report"), tr("for the inspector or the vet (PDF)"), kind)});
    m_scopes.setEntries({entry(colonyKey, tr("One colony"), {}, m_scope),
                         entry(yardKey, tr("One yard"), {}, m_scope),
                         entry(seasonKey, tr("All yards"), {}, m_scope)});
    m_years.setEntries({entry(thisSeason, tr("This season"), {}, m_year),
                        entry(lastSeason, tr("Last season"), {}, m_year),
                        entry(allYears, tr("All years"), {}, m_year)});
    listSubjects();
    emit changed();
}

void ExportController::listSubjects() {
    QList<ChoiceListModel::Entry> entries;
    m_services.kept([&] {
        const auto yards = m_services.store.yards();
        const bool known = std::ranges::any_of(
            yards, [&](const records::Yard& each) { return each.id == m_yardId.toStdString(); });
        if (!known)
            m_yardId = yards.empty() ? QString() : QString::fromStdString(yards.front().id);
        if (m_scope == yardKey)
            for (const records::Yard& yard : yards)
                entries.append(
                    entry(QString::fromStdString(yard.id), QString::fromStdString(yard.name), {}, m_yardId));
        if (m_scope != colonyKey)
            return;
        for (const records::Yard& yard : yards) {
            auto colonies = m_services.store.colonies(yard.id);
            std::ranges::stable_sort(colonies, [](const auto& a, const auto& b) {
                return season::naturalOrder(a.label, b.label) < 0;
            });
            for (const records::Colony& colony : colonies) {
                const QString id = QString::fromStdString(colony.id);
                if (m_colonyId.isEmpty() && yard.id == m_yardId.toStdString())
                    m_colonyId = id;
                entries.append(entry(id, tr("Colony %1").arg(QString::fromStdString(colony.label)),
                                     QString::fromStdString(yard.name), m_colonyId));
            }
        }
        if (m_colonyId.isEmpty() && !entries.isEmpty()) { // the yard looked at has none
            m_colonyId = entries.first().key;
            entries.first().chosen = true;
        }
    });
    m_subjects.setEntries(entries);
}

void ExportController::chooseKind(const QString& key) {
    for (std::size_t i = 0; i < kindKeys.size(); ++i)
        if (key == QLatin1String(kindKeys[i]))
            m_kind = static_cast<Kind>(i);
    m_exact = false;
    m_result.clear();
    m_failed = false;
    list();
}

void ExportController::chooseScope(const QString& key) {
    m_scope = key;
    list();
}

void ExportController::chooseSubject(const QString& key) {
    (m_scope == colonyKey ? m_colonyId : m_yardId) = key;
    list();
}

void ExportController::chooseYears(const QString& key) {
    m_year = key;
    list();
}

void ExportController::setExact(bool exact) {
    m_exact = exact;
    emit changed();
}

void ExportController::setSemicolon(bool semicolon) {
    m_semicolon = semicolon;
    emit changed();
}

void ExportController::setLetter(bool letter) {
    m_letter = letter;
    emit changed();
}

QString ExportController::positionsLine() const {
    if (m_exact)
        return tr("Positions go out exact. Whoever gets the file knows where your hives stand.");
    return m_kind == Report ? tr("The report has no positions.") : tr("Positions are blurred to about 1 km.");
}

QString ExportController::action() const {
    switch (m_kind) {
    case Samples:
        return tr("Write the washes");
    case Counts:
        return tr("Write the counts");
    case Treatments:
        return tr("Write the treatments");
    case Map:
        return tr("Write the map");
    case Calendar:
        return tr("Write the calendar");
    case Report:
        break;
    }
    return tr("Write the report");
}

QString ExportController::subjectName() const {
    for (const ChoiceListModel::Entry& each : m_subjects.entries())
        if (each.chosen)
            return each.title;
    return tr("all yards");
}

QString ExportController::fileName() const {
    const QString day = QString::fromStdString(records::toIso(m_services.today()));
    switch (m_kind) {
    case Samples:
        return tr("halfcup-washes-%1.csv", "file name").arg(day);
    case Counts:
        return tr("halfcup-counts-%1.csv", "file name").arg(day);
    case Treatments:
        return tr("halfcup-treatments-%1.csv", "file name").arg(day);
    case Map:
        return tr("halfcup-map-%1.geojson", "file name").arg(day);
    case Calendar:
        return tr("halfcup-season-%1.ics", "file name").arg(day);
    case Report:
        break;
    }
    return tr("halfcup-report-%1-%2.pdf", "file name: subject, day").arg(forFileName(subjectName()), day);
}

exchange::Selection ExportController::selection() const {
    exchange::Selection selection;
    if (m_kind != Report)
        return selection;
    if (m_scope == colonyKey)
        selection.colonyId = m_colonyId.toStdString();
    if (m_scope == yardKey)
        selection.yardId = m_yardId.toStdString();
    if (m_year == allYears)
        return selection;
    for (const records::Yard& yard : m_services.store.allYards()) {
        const season::BeeYearStart start = season::beeYearStart(yard);
        const int now = season::beeYearBegin(m_services.today(), start).year;
        const auto [first, last] = season::beeYear(m_year == lastSeason ? now - 1 : now, start);
        selection.periods.emplace(yard.id, exchange::Period{first, last});
    }
    return selection;
}

bool ExportController::writeTo(const QString& path) {
    QString written;
    std::optional<exchange::FileError> error;
    QString trouble;
    const bool read = m_services.kept([&] {
        try {
            error = exchange::writeSafely(path,
                                          [&](const exchange::ByteSink& sink) { written = writeInto(sink); });
        } catch (const store::StoreError&) {
            throw;
        } catch (const std::runtime_error& problem) { // a machine without fonts
            trouble = QString::fromUtf8(problem.what());
        }
    });
    m_failed = !read || error || !trouble.isEmpty();
    if (!trouble.isEmpty())
        m_result = trouble;
    else if (read)
        m_result = error ? fileTrouble(error->problem, path)
                         : tr("%1: %2", "what, where").arg(written, whereItIs(m_services, path));
    m_exact = false; // asked for each time
    emit changed();
    return !m_failed;
}

bool ExportController::write() {
    const device::Folder folder = m_services.device.folders->exports();
    if (!folder.ok()) {
        m_failed = true;
        m_result = noPlaceToWrite(folder);
        emit changed();
        return false;
    }
    const QString path = QDir(folder.path).filePath(fileName());
    if (!writeTo(path))
        return false;
    handOn(m_services, path);
    return true;
}

} // namespace halfcup::touch
