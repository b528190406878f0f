// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "season.h"

#include "exchange/for_people.h"
#include "exchange/keep_exchange.h"
#include "exchange/keep_import.h"
#include "store/merge.h"
#include "store/outgoing.h"
#include "store/restore.h"
#include "table_kit.h"

#include <QDir>
#include <QFileInfo>

namespace halfcup::faults {

using storetest::bytesOf;

namespace {

/// One text a row, its columns parted by bars.
std::vector<std::string> rowsOf(sqlite3* database, const char* text) {
    std::vector<std::string> rows;
    const auto keep = [](void* into, int columns, char** values, char**) {
        std::string row;
        for (int i = 0; i < columns; ++i)
            row += (i == 0 ? "" : "|") + std::string(values[i] ? values[i] : "");
        static_cast<std::vector<std::string>*>(into)->push_back(row);
        return 0;
    };
    char* trouble = nullptr;
    if (sqlite3_exec(database, text, keep, &rows, &trouble) != SQLITE_OK)
        rows.push_back(std::string("trouble: ") + (trouble ? trouble : "?"));
    sqlite3_free(trouble);
    return rows;
}

std::map<std::string, std::string> pairsOf(sqlite3* database, const char* text) {
    std::map<std::string, std::string> pairs;
    for (const std::string& row : rowsOf(database, text)) {
        const auto bar = row.find('|');
        auto& value = pairs[row.substr(0, bar)];
        value += value.empty() ? row.substr(bar + 1) : " and " + row; // twice there: seen as a difference
    }
    return pairs;
}

/// What the tests ask of a file that is not there: that it holds nothing.
constexpr auto noTables = "trouble: no such table";

void addMissing(std::multiset<std::string>& all, const std::string& name) {
    if (!all.contains(name))
        all.insert(name);
}

class FileTrouble : public std::runtime_error {
public:
    explicit FileTrouble(exchange::FileError error)
        : std::runtime_error(error.technical.toStdString())
        , m_error(std::move(error)) {}
    [[nodiscard]] exchange::FileProblem problem() const { return m_error.problem; }

private:
    exchange::FileError m_error;
};

} // namespace

Kept keptIn(const QString& path) {
    Kept kept;
    if (!QFileInfo::exists(path) || QFileInfo(path).size() == 0)
        return kept; // begun and not come to its first table
    sqlite3* database = nullptr;
    if (sqlite3_open_v2(path.toUtf8().constData(), &database, SQLITE_OPEN_READWRITE, nullptr) != SQLITE_OK) {
        kept.trouble = "cannot be opened";
    } else if (!rowsOf(database, "SELECT id FROM yard LIMIT 1").empty() ||
               !rowsOf(database, "SELECT 1 FROM sqlite_master LIMIT 1").empty()) {
        for (const char* check : {"PRAGMA integrity_check", "PRAGMA foreign_key_check"})
            for (const std::string& row : rowsOf(database, check))
                if (row != "ok")
                    kept.trouble += row + "; ";
        for (const std::string& row : rowsOf(database, "SELECT name FROM yard"))
            if (!row.starts_with(noTables))
                kept.yards.insert(row);
        for (const std::string& row : rowsOf(
                 database, "SELECT y.name || '/' || c.label FROM colony c JOIN yard y ON y.id = c.yard_id"))
            if (!row.starts_with(noTables))
                kept.colonies.insert(row);
        kept.jars = pairsOf(database, "SELECT jar, state || ' ' || (SELECT count(*) FROM count_event"
                                      " WHERE sample_id = sample.id) FROM sample WHERE jar IS NOT NULL");
        kept.treatments =
            pairsOf(database, "SELECT batch, coalesce(removed_on, '') || ': ' || coalesce((SELECT"
                              " group_concat(label) FROM (SELECT c.label FROM treated t JOIN colony c ON"
                              " c.id = t.colony_id WHERE t.treatment_id = treatment.id AND t.removed = 0"
                              " ORDER BY c.label)), '') FROM treatment");
        for (auto* pairs : {&kept.jars, &kept.treatments})
            std::erase_if(*pairs,
                          [](const auto& pair) { return pair.first.starts_with("trouble: no such"); });
        const auto earlier = rowsOf(database, "SELECT id FROM sample WHERE fix_source = 'table' AND"
                                              " state = 'finished' AND (SELECT count(*) FROM count_event"
                                              " WHERE sample_id = sample.id) = 1");
        kept.earlierWashes = static_cast<int>(
            std::ranges::count_if(earlier, [](const auto& row) { return !row.starts_with("trouble"); }));
    }
    sqlite3_close(database);
    return kept;
}

std::string inWords(const Kept& kept) {
    std::string text = "yards";
    for (const auto& name : kept.yards)
        text += " " + name;
    text += "; colonies";
    for (const auto& name : kept.colonies)
        text += " " + name;
    for (const auto& [label, state] : kept.jars)
        text += "; jar " + label + " " + state;
    for (const auto& [batch, what] : kept.treatments)
        text += "; " + batch + " " + what;
    return text + "; " + std::to_string(kept.earlierWashes) + " earlier" +
           (kept.trouble.empty() ? "" : "; TROUBLE " + kept.trouble);
}

Season::Season(QString folder, QString workshop)
    : m_folder(std::move(folder))
    , m_workshop(std::move(workshop))
    , m_path(m_folder + "/halfcup.db") {
    m_otherHost.chance = 1U << 30;
}

Season::~Season() = default;

store::Store& Season::open() {
    if (!m_store)
        m_store = std::make_unique<store::Store>(m_path.toStdString(), m_host.asked());
    return *m_store;
}

void Season::close() {
    m_store.reset();
}

Outcome Season::tryTo(Act act) {
    Outcome outcome;
    ++m_number;
    m_host.nowMs += 1000;
    Kept after = m_kept;
    try {
        perform(act, after);
        outcome.done = true;
        m_kept = after;
        m_refused.clear();
    } catch (const store::StoreError& error) {
        outcome.trouble = error.kind();
        outcome.technical = error.what();
    } catch (const store::BackupError& error) {
        outcome.backup = error.kind();
        outcome.technical = error.what();
    } catch (const FileTrouble& error) {
        outcome.file = error.problem();
        outcome.technical = error.what();
    }
    if (!outcome.done)
        m_refused.push_back(after);
    return outcome;
}

void Season::perform(Act act, Kept& after) {
    switch (act) {
    case Act::Yard:
        return addYard(after);
    case Act::Scoop:
        return scoop(after);
    case Act::Tap:
        return count(after);
    case Act::Finish:
        return finish(after);
    case Act::Treat:
        return treat(after);
    case Act::Remove:
        return removeTreatment(after);
    case Act::Merge:
        return merge(after);
    case Act::Backup:
        return backUp();
    case Act::Restore:
        return restore(after);
    case Act::Import:
        return import(after);
    case Act::Table:
        return write("washes.csv", [&](const auto& sink) { exchange::exportSamples(open(), {}, sink); });
    case Act::Out:
        return write("out.halfcup", [&](const auto& sink) {
            store::Outgoing outgoing(open());
            exchange::writeExchange(outgoing, sink, m_host.nowMs);
        });
    case Act::Reopen:
        close();
        open();
    }
}

void Season::addYard(Kept& after) {
    const std::string name = "Yard" + std::to_string(m_number);
    store::Store& store = open();
    after.yards.insert(name);
    for (const char* label : {"1", "2", "3"})
        after.colonies.insert(name + "/" + label);
    store.inOneTransaction([&] {
        records::Yard yard;
        yard.id = store.newId();
        yard.name = name;
        store.save(yard);
        for (const char* label : {"1", "2", "3"})
            storetest::addColony(store, yard.id, label);
    });
}

void Season::scoop(Kept& after) {
    store::Store& store = open();
    if (store.yards().empty())
        return addYard(after);
    const records::Yard yard = store.yards().front();
    records::Sample jar;
    jar.id = store.newId();
    jar.yardId = yard.id;
    jar.colonyId = store.colonies(yard.id).front().id;
    jar.jar = "J" + std::to_string(m_number);
    jar.startedAtMs = jar.scoopedAtMs.emplace(m_host.nowMs);
    after.jars[jar.jar] = "draft 0";
    m_jar.reset();
    store.save(jar);
    m_jar = jar;
}

void Season::count(Kept& after) {
    store::Store& store = open();
    if (!m_jar || !store.sample(m_jar->id))
        return scoop(after);
    const auto there = store.countEvents(m_jar->id).size();
    after.jars[m_jar->jar] = "draft " + std::to_string(there + 1);
    store.addCount(m_jar->id, {0, 1, records::CountEvent::Change::Tap, 0, m_host.nowMs});
}

void Season::finish(Kept& after) {
    store::Store& store = open();
    if (!m_jar || !store.sample(m_jar->id))
        return scoop(after);
    records::Sample done = *m_jar;
    done.state = records::SampleState::Finished;
    done.finishedAtMs = m_host.nowMs;
    done.note = std::string(400, 'n');
    after.jars[done.jar] = "finished " + std::to_string(store.countEvents(done.id).size());
    store.save(done);
    m_jar.reset();
}

void Season::treat(Kept& after) {
    store::Store& store = open();
    if (store.yards().empty())
        return addYard(after);
    const records::Yard yard = store.yards().front();
    records::GivenTreatment entry;
    entry.treatment.id = store.newId();
    entry.treatment.yardId = yard.id;
    entry.treatment.substance = "oxalic-acid";
    entry.treatment.batch = "B" + std::to_string(m_number);
    entry.treatment.firstDay = entry.treatment.lastDay = {2026, 6, 15};
    std::set<std::string> labels;
    for (const records::Colony& colony : store.colonies(yard.id)) {
        entry.colonyIds.push_back(colony.id);
        labels.insert(colony.label);
    }
    std::string all;
    for (const std::string& label : labels)
        all += (all.empty() ? "" : ",") + label;
    after.treatments[entry.treatment.batch] = ": " + all;
    m_treatment.reset();
    store.save(entry);
    m_treatment = entry;
}

void Season::removeTreatment(Kept& after) {
    store::Store& store = open();
    if (!m_treatment || !store.treatment(m_treatment->treatment.id))
        return treat(after);
    records::GivenTreatment entry = *m_treatment;
    entry.treatment.removedOn = records::Date{2026, 6, 20};
    entry.colonyIds.resize(1);
    after.treatments[entry.treatment.batch] = "2026-06-20: " + store.colony(entry.colonyIds[0])->label;
    store.save(entry);
    m_treatment.reset();
}

void Season::merge(Kept& after) {
    const QString from = m_workshop + "/other.db";
    const QString file = m_workshop + "/other.halfcup";
    {
        m_otherHost.nowMs = m_host.nowMs;
        store::Store other(from.toStdString(), m_otherHost.asked());
        const std::string name = "Other" + std::to_string(m_number);
        storetest::addPlace(other, name);
        store::Outgoing outgoing(other);
        const auto error = exchange::writeSafely(
            file, [&](const auto& sink) { exchange::writeExchange(outgoing, sink, m_host.nowMs); });
        if (error)
            throw FileTrouble(*error);
    }
    const Kept others = keptIn(from);
    for (const std::string& name : others.yards)
        addMissing(after.yards, name);
    for (const std::string& name : others.colonies)
        addMissing(after.colonies, name);
    store::Merge merge(open());
    exchange::takeExchangeFile(merge, file);
    merge.finish();
    merge.keep();
    m_asked.insert(QFileInfo(QString::fromStdString(store::mergeCopyName(m_path.toStdString()))).fileName());
}

void Season::backUp() {
    open();
    const QString place = m_folder + "/" + QString::number(m_backupsMade) + store::backupEnding;
    store::makeBackup(m_path.toStdString(), place.toStdString(), {m_host.nowMs, 0});
    ++m_backupsMade;
    static_cast<void>(store::lookInto(place.toStdString()));
    if (!(keptIn(place) == m_kept))
        m_wrong = "the backup holds " + QString::fromStdString(inWords(keptIn(place)));
    for (const auto& [earlier, kept] : m_backups) { // the keeper has room for one
        m_asked.erase(QFileInfo(earlier).fileName());
        QFile::remove(earlier);
    }
    m_backups = {{place, m_kept}};
    m_asked.insert(QFileInfo(place).fileName());
}

void Season::restore(Kept& after) {
    if (m_backups.empty())
        return backUp();
    close();
    after = m_backups.back().second;
    const auto restored =
        store::restoreBackup(m_backups.back().first.toStdString(), m_path.toStdString(), m_host.asked());
    const QString aside = QString::fromStdString(restored.keptAside);
    if (!aside.isEmpty() && !(keptIn(aside) == m_kept))
        m_wrong = "aside is " + QString::fromStdString(inWords(keptIn(aside)));
    QFile::remove(aside); // the keeper makes room
}

void Season::import(Kept& after) {
    std::string table = "date,yard,colony,mites,bees\n";
    for (int day = 1; day <= 3; ++day)
        table += "2024-0" + std::to_string(1 + m_number % 9) + "-1" + std::to_string(day) + ",Meadow,M" +
                 std::to_string(m_number) + "," + std::to_string(day) + ",300\n";
    const exchange::TextTable read = exchange::readTable(table);
    const auto here = exchange::onThisPhone(
        open(), [](const records::Yard& yard, const records::Date&) { return yard.lines; });
    const auto plan = exchange::planImport(exchange::readWashes(read, tabletest::rulesFor(read)), here,
                                           "From a table: t.csv");
    auto found = exchange::recordsOf(plan, here, false);
    exchange::judge(found, here);
    if (found.samples.size() != 3)
        m_wrong = "the table has " + QString::number(found.samples.size()) + " washes";
    addMissing(after.yards, "Meadow");
    after.colonies.insert("Meadow/M" + std::to_string(m_number));
    after.earlierWashes += 3;
    exchange::keepImport(open(), found);
}

void Season::write(const QString& name, const std::function<void(const exchange::ByteSink&)>& content) {
    const QString place = m_folder + "/" + name;
    const QByteArray before = bytesOf(place);
    open();
    std::string text;
    content([&](std::string_view bytes) { text += bytes; });
    const auto error = exchange::writeSafely(place, [&](const auto& sink) { sink(text); });
    const QByteArray there = bytesOf(place);
    const bool isNew = there == QByteArray::fromStdString(text);
    if (!(isNew || (error && there == before)))
        m_wrong = name + " is neither as it was nor as it should be";
    if (isNew)
        m_asked.insert(name);
    if (error)
        throw FileTrouble(*error);
}

QString Season::fault() {
    QString wrong = std::exchange(m_wrong, {});
    const Kept there = keptIn(m_path);
    if (std::ranges::find(m_refused, there) != m_refused.end())
        m_kept = there; // not acknowledged, and there all the same: whole
    m_refused.clear();
    if (!(there == m_kept))
        wrong += "acknowledged: " + QString::fromStdString(inWords(m_kept)) +
                 "\non the disk: " + QString::fromStdString(inWords(there));
    for (const auto& [place, kept] : m_backups)
        if (!(keptIn(place) == kept))
            wrong += "\n" + place + " is another";
    return wrong;
}

/// The copies that are made before a step of the schema stay; there is one where making the first tables was
/// cut short.
QString Season::leftovers() const {
    QStringList more;
    for (const QString& name : QDir(m_folder).entryList(QDir::Files | QDir::Hidden))
        if (!m_asked.contains(name) && !name.startsWith("ballast") && name != "halfcup.db" &&
            name != "halfcup.db-wal" && name != "halfcup.db-shm" && !name.startsWith("halfcup.db.before-v"))
            more.append(name);
    return more.join(' ');
}

} // namespace halfcup::faults
