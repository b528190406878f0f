// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// "halfcup-desk due" on a database says what the season says of the same records before they were kept.
#include "desk/csv_reader.h"
#include "desk/verb.h"
#include "records/judgement.h"
#include "season/yard_due.h"
#include "store_kit.h"

#include <QTemporaryDir>
#include <QTest>

#include <algorithm>
#include <array>
#include <cstdlib>
#include <ctime>
#include <random>
#include <sstream>

using namespace halfcup;
using halfcup::records::Date;

namespace {

using Rows = std::vector<std::vector<std::string>>;

std::int64_t utcMs(const Date& day, int hour) {
    return (records::daysSinceEpoch(day) * 24 + hour) * 3'600'000;
}

void setZone(const char* zone) {
    setenv("TZ", zone, 1);
    tzset();
}

QString shown(const std::vector<std::string>& row) {
    QStringList cells;
    for (const std::string& cell : row)
        cells.append(QString::fromStdString(cell));
    return cells.join('|');
}

Rows answerOf(const QString& path, const Date& on) {
    std::istringstream in;
    std::ostringstream out, err;
    desk::Streams streams{in, out, err};
    if (desk::runProgram({"due", path.toStdString(), "--on", records::toIso(on)}, streams) != 0)
        qFatal("halfcup-desk due: %s", err.str().c_str());
    std::istringstream back(out.str());
    desk::CsvReader reader(back);
    desk::CsvRow row;
    Rows rows;
    while (reader.next(row))
        rows.emplace_back(row.fields.begin(), row.fields.begin() + static_cast<std::ptrdiff_t>(row.count));
    return rows;
}

Rows expectedOf(const std::vector<records::YardRecords>& yards, const records::Moment& now) {
    Rows rows{{"yard", "colony", "due_on", "days_late", "reason", "sentence"}};
    for (const season::DueInYard& each : season::dueInYards(yards, now)) {
        const season::Due& due = each.due.due;
        rows.push_back({yards[each.yard].yard.name, each.due.colony.label, records::toIso(due.dueOn),
                        std::to_string(due.daysLate), season::wordOf(due.reason).text,
                        season::inEnglish(season::phraseOf(due))});
    }
    return rows;
}

/// Random yards of both hemispheres and the tropics, kept in the store and remembered as they were made.
class Keeper {
public:
    Keeper(store::Store& store, unsigned seed)
        : m_store(store)
        , m_random(seed) {}

    void make() {
        for (const auto& [name, latitudeDeg] :
             {std::pair{"A, \"far\" yard", 53.0}, {"B", -40.0}, {"C", 5.0}}) {
            records::YardRecords kept;
            kept.yard.id = m_store.newId();
            kept.yard.name = name;
            kept.yard.position = records::Position{latitudeDeg, 19.6, {}};
            if (below(2) == 0)
                kept.yard.firstWashFrom = records::MonthDay{3, 20};
            m_store.save(kept.yard);
            for (int i = 0; i < 6; ++i)
                addColony(kept, std::to_string(i + 1));
            m_yards.push_back(std::move(kept));
        }
    }

    /// What was known at the end of the day: without the washes after it.
    std::vector<records::YardRecords> knownOn(const Date& day) const {
        std::vector<records::YardRecords> yards = m_yards;
        for (records::YardRecords& kept : yards)
            for (const records::Colony& colony : kept.colonies) {
                const records::Sample* latest = nullptr;
                for (const records::Sample& wash : m_washes)
                    if (wash.colonyId == colony.id && wash.startedAtMs < utcMs(day, 24) &&
                        (!latest || latest->startedAtMs < wash.startedAtMs))
                        latest = &wash;
                if (latest)
                    kept.latestWashes.push_back(*latest);
            }
        return yards;
    }

private:
    int below(int limit) { return static_cast<int>(m_random() % static_cast<unsigned>(limit)); }
    Date day() { return records::plusDays({2025, 9, 1}, below(300)); }

    void addColony(records::YardRecords& kept, const std::string& label) {
        kept.colonies.push_back(storetest::addColony(m_store, kept.yard.id, label));
        const records::RecordId id = kept.colonies.back().id;
        for (int i = below(4); i > 0; --i) {
            records::Sample sample;
            sample.id = m_store.newId();
            sample.colonyId = id;
            sample.yardId = kept.yard.id;
            sample.startedAtMs = utcMs(day(), 8) + i; // no two at one time
            sample.state = below(4) == 0 ? records::SampleState::Draft : records::SampleState::Finished;
            sample.scoop.beesMean = below(2) == 0 ? 302 : 150; // of half the bees little can be told
            sample.scoop.beesCv = 0.12;
            sample.answer = records::answerOf(sample, below(14), {}, {});
            m_store.save(sample);
            if (sample.state == records::SampleState::Finished)
                m_washes.push_back(sample);
        }
        for (int i = below(3); i > 0; --i) {
            records::GivenTreatment given;
            given.treatment.id = m_store.newId();
            given.treatment.yardId = kept.yard.id;
            given.treatment.substance = "formic-acid";
            given.treatment.firstDay = day();
            given.treatment.lastDay = records::plusDays(given.treatment.firstDay, below(40));
            given.colonyIds = {id};
            m_store.save(given);
            kept.treatments.push_back(given);
        }
        if (below(5) == 0) {
            records::ColonyEvent died;
            died.id = m_store.newId();
            died.colonyId = id;
            died.kind = records::EventKind::Dead;
            died.day = day();
            m_store.save(died);
            kept.events.push_back(died);
        }
    }

    store::Store& m_store;
    std::mt19937 m_random;
    std::vector<records::YardRecords> m_yards;
    std::vector<records::Sample> m_washes;
};

} // namespace

class DeskDueTest : public QObject {
    Q_OBJECT

private slots:
    void cleanup() { setZone("UTC"); }

    void sameAsTheSeason() {
        std::array<int, 5> seen{}; // of each reason
        for (unsigned seed = 1; seed <= 6; ++seed) {
            const QTemporaryDir folder;
            const QString path = folder.filePath("keeper.db");
            storetest::Host host;
            host.nowMs = utcMs({2025, 9, 1}, 9);
            store::Store store(path.toStdString(), host.asked());
            Keeper keeper(store, seed);
            store.inOneTransaction([&] { keeper.make(); });
            for (const Date& on :
                 {Date{2025, 12, 31}, {2026, 1, 1}, {2026, 2, 28}, {2026, 5, 18}, {2026, 7, 20}}) {
                const auto yards = keeper.knownOn(on);
                const Rows expected = expectedOf(yards, {utcMs(on, 12), 0});
                const Rows found = answerOf(path, on);
                QVERIFY(found.size() > 1);
                for (std::size_t i = 0; i < std::min(found.size(), expected.size()); ++i)
                    QCOMPARE(shown(found[i]), shown(expected[i]));
                QCOMPARE(found.size(), expected.size());
                for (const auto& each : season::dueInYards(yards, {utcMs(on, 12), 0}))
                    ++seen[static_cast<std::size_t>(each.due.due.reason)];
            }
        }
        for (const int times : seen)
            QVERIFY(times > 0);
    }

    // Made on 18 May at 20:00 UTC: that is 19 May in Auckland (12 hours ahead in May, tz database), and still
    // 18 May in Berlin, where the clocks are ahead by two.
    void dayIsThatOfTheZone() {
        const QTemporaryDir folder;
        const QString path = folder.filePath("keeper.db");
        storetest::Host host;
        host.nowMs = utcMs({2026, 5, 18}, 20);
        {
            store::Store store(path.toStdString(), host.asked());
            storetest::Place place = storetest::addPlace(store);
            place.yard.firstWashFrom = records::MonthDay{3, 1};
            store.save(place.yard);
        }
        setZone("Europe/Berlin");
        QCOMPARE(answerOf(path, {2026, 5, 20})[1][3], std::string("2"));
        setZone("Pacific/Auckland");
        QCOMPARE(answerOf(path, {2026, 5, 20})[1][3], std::string("1"));
        // The clocks go forward in Berlin on 29 March 2026: noon is noon, and a day is a day.
        setZone("Europe/Berlin");
        QCOMPARE(answerOf(path, {2026, 3, 28}).size(), std::size_t{2});
        QCOMPARE(std::stoi(answerOf(path, {2026, 3, 30})[1][3]),
                 std::stoi(answerOf(path, {2026, 3, 28})[1][3]) + 2);
    }
};

QTEST_GUILESS_MAIN(DeskDueTest)
#include "desk_due.moc"
