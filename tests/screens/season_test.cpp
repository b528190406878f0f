// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "screens.h"

#include "season/what_if.h"
#include "touch/verdict_mark.h"

#include <QDir>
#include <QFile>
#include <QTest>
#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <algorithm>
#include <map>

using namespace halfcup;
using namespace halfcup::screens;
using records::Date;
using touch::ChoiceListModel;
using touch::Navigator;

namespace {

const ChoiceListModel::Entry* entryOf(ChoiceListModel* list, const QString& key) {
    for (const ChoiceListModel::Entry& each : list->entries())
        if (each.key == key)
            return &each;
    return nullptr;
}

/// A finished wash of a colony on a day at noon.
records::Sample wash(const records::Colony& colony, const Date& day, std::int64_t mites, double bees,
                     double load) {
    records::Sample sample;
    sample.colonyId = colony.id;
    sample.yardId = colony.yardId;
    sample.state = records::SampleState::Finished;
    sample.startedAtMs = records::daysSinceEpoch(day) * 86'400'000 + 43'200'000;
    sample.finishedAtMs = sample.startedAtMs;
    sample.scoop.beesMean = bees;
    sample.scoop.beesCv = 0.1;
    sample.answer.emplace();
    sample.answer->mites = mites;
    sample.answer->loadQ05 = load * 0.5;
    sample.answer->loadQ50 = load;
    sample.answer->loadQ95 = load * 2;
    return sample;
}

/// Rows of a table beside the project, by the names in its first line; empty where it is not there.
std::vector<std::map<QString, QString>> table(const char* name) {
    QFile file(QStringLiteral(HALFCUP_SHARED_DIR "/reference/%1").arg(QLatin1String(name)));
    std::vector<std::map<QString, QString>> rows;
    if (!file.open(QIODevice::ReadOnly | QIODevice::Text))
        return rows;
    const QStringList lines = QString::fromUtf8(file.readAll()).split(u'\n', Qt::SkipEmptyParts);
    const QStringList names = lines.first().split(u',');
    for (qsizetype i = 1; i < lines.size(); ++i) {
        const QStringList cells = lines[i].split(u',');
        std::map<QString, QString> row;
        for (qsizetype k = 0; k < std::min(names.size(), cells.size()); ++k)
            row[names[k]] = cells[k];
        rows.push_back(std::move(row));
    }
    return rows;
}

} // namespace

/// What to treat with, the record, whether it worked, and the season's dates, on the real pages of the demo.
/// The stage's day is 15 June 2026; the most urgent colony of the demo is then colony 4 of Alder Bend.
class SeasonTest : public QObject {
    Q_OBJECT

    /// From the choices: the forecast typed, and supers off, brood capped, eleven frames.
    static bool typeSituation(Stage& stage, const char* highs) {
        return stage.touch(QStringLiteral("mainAction")) && type(stage, "highs", highs) &&
               stage.touch(QStringLiteral("supers-off")) && stage.touch(QStringLiteral("brood-capped")) &&
               type(stage, "frames", "11") && stage.touch(QStringLiteral("mainAction"));
    }

    static bool toTheRecord(Stage& stage, const char* choice) {
        if (!toTheChoices(stage) || !stage.touch(QStringLiteral("corner"))) // the whole yard
            return false;
        stage.app().treat()->openChoice(QLatin1String(choice));
        stage.settle();
        return stage.touch(QStringLiteral("mainAction")) && stage.find(QStringLiteral("product"));
    }

    static records::GivenTreatment newest(Stage& stage) { // by the time of its entry
        auto all = stage.program().store().allTreatments();
        return *std::ranges::max_element(
            all, {}, [](const records::GivenTreatment& each) { return each.treatment.recordedAtMs; });
    }

    static std::size_t kept(Stage& stage) { return stage.program().store().allTreatments().size(); }

private slots:
    // Label of one product, as the handbook has it: daily highs of 10 to 29.5 C (50 to 85 F).
    void formicAcidFitsByItsForecast_data() {
        QTest::addColumn<QByteArray>("highs");
        QTest::addColumn<bool>("fahrenheit");
        QTest::addColumn<int>("verdict");
        QTest::addColumn<QString>("reason");
        QTest::newRow("24 26 27") << QByteArray("24 26 27") << false << int(touch::VerdictMark::Fits)
                                  << QString();
        QTest::newRow("one day at 32") << QByteArray("24 32 27") << false << int(touch::VerdictMark::NotNow)
                                       << QStringLiteral("Too hot: 32 °C on 16 June, the limit is 29.5 °C.");
        QTest::newRow("8") << QByteArray("8 12 14") << false << int(touch::VerdictMark::NotNow)
                           << QStringLiteral("Too cold: 8 °C on 15 June, the limit is 10 °C.");
        QTest::newRow("Fahrenheit") << QByteArray("75 79 81") << true << int(touch::VerdictMark::Fits)
                                    << QString();
        QTest::newRow("one day at 95 F")
            << QByteArray("75 95 81") << true << int(touch::VerdictMark::NotNow)
            << QStringLiteral("Too hot: 95 °F on 16 June, the limit is 85.1 °F.");
    }

    void formicAcidFitsByItsForecast() {
        QFETCH(QByteArray, highs);
        QFETCH(bool, fahrenheit);
        QFETCH(int, verdict);
        QFETCH(QString, reason);
        Stage stage(Stage::Demo);
        // Colony 2, which had oxalic acid last: colony 4 had formic acid, and that again wants care.
        for (const auto& each : stage.app().here()->colonies()->entries())
            if (each.label == QStringLiteral("2"))
                stage.app().here()->openColony(each.colonyId);
        stage.settle();
        QVERIFY(stage.touch(QStringLiteral("treat")));
        QVERIFY(stage.find(QStringLiteral("treatPage")));
        if (fahrenheit)
            stage.app().situation()->setFahrenheit(true);
        QVERIFY(typeSituation(stage, highs.constData()));
        QVERIFY(stage.find(QStringLiteral("treatPage")));
        const auto* formic = entryOf(stage.app().treat()->choices(), QStringLiteral("formic-acid"));
        QVERIFY(formic);
        QVERIFY2(formic->standing == verdict, qPrintable(formic->note + u' ' + formic->detail));
        if (!reason.isEmpty())
            QCOMPARE(formic->detail, reason);
        QCOMPARE(stage.program().qmlWarnings(), QStringList());
    }

    void whatIsSoIsKeptAsEvents() {
        Stage stage(Stage::Demo);
        QVERIFY(toTheChoices(stage));
        const auto colony = stage.app().treat()->scope()->colonies.front();
        const auto before = stage.program().store().eventsOf(colony.id).size();
        QVERIFY(typeSituation(stage, "24 26 27"));
        const auto events = stage.program().store().eventsOf(colony.id);
        // The demo has supers on since 3 May and capped brood; the eleven frames of 12 April are too old to
        // go by, so they are written down anew.
        QCOMPARE(events.size(), before + 2);
        for (std::size_t i = before; i < events.size(); ++i) {
            QVERIFY(events[i].kind == records::EventKind::SupersOff ||
                    events[i].kind == records::EventKind::Strength);
            QVERIFY(events[i].day == (Date{2026, 6, 15}));
            QVERIFY(events[i].demo);
        }
        QVERIFY(stage.app().treat()->line().contains(QStringLiteral("supers off")));
    }

    void aBadForecastIsToldAndKeepsNothing() {
        Stage stage(Stage::Demo);
        QVERIFY(toTheChoices(stage));
        const auto colony = stage.app().treat()->scope()->colonies.front();
        const auto before = stage.program().store().eventsOf(colony.id).size();
        QVERIFY(typeSituation(stage, "24 200 26"));
        QVERIFY(stage.find(QStringLiteral("situationPage")));
        QVERIFY2(stage.app().situation()->problem().contains(QStringLiteral("200 °C")),
                 qPrintable(stage.app().situation()->problem()));
        QVERIFY(type(stage, "highs", "24 26"));
        QVERIFY(stage.touch(QStringLiteral("mainAction")));
        QVERIFY(stage.app().situation()->problem().contains(QStringLiteral("3 day")));
        QCOMPARE(stage.program().store().eventsOf(colony.id).size(), before);
    }

    void aWholeYardIsOneEntry() {
        Stage stage(Stage::Demo);
        QVERIFY(toTheRecord(stage, "formic-acid"));
        QVERIFY(type(stage, "product", "formic acid pads"));
        QVERIFY(type(stage, "withdrawal_days", "0"));
        QVERIFY(type(stage, "quantity", "10 pads"));
        QVERIFY(type(stage, "batch", "FA-99"));
        QVERIFY(stage.touch(QStringLiteral("mainAction")));
        QVERIFY(stage.find(QStringLiteral("keepAllTheSame"))); // supers are on two of them
        QCOMPARE(kept(stage), std::size_t{4});                 // those of the demo until today
        QVERIFY(stage.touch(QStringLiteral("keepAllTheSame")));
        QCOMPARE(kept(stage), std::size_t{5});
        const auto entry = newest(stage);
        QCOMPARE(entry.colonyIds.size(), std::size_t{5});
        QCOMPARE(entry.treatment.substance, std::string("formic-acid"));
        QCOMPARE(entry.treatment.product, std::string("formic acid pads"));
        QCOMPARE(entry.treatment.batch, std::string("FA-99"));
        QVERIFY(entry.treatment.withdrawalDays == 0);
        QVERIFY(entry.treatment.firstDay == (Date{2026, 6, 15}));
        QVERIFY(entry.treatment.lastDay == (Date{2026, 6, 21})); // 7 days, the shortest course
        QVERIFY(entry.treatment.removalDue == (Date{2026, 6, 21}));
        QVERIFY(!entry.treatment.verdict.empty());
        QVERIFY(stage.find(QStringLiteral("statusLine")));
        // The season has its removal now, and the page opens it.
        stage.app().navigator()->open(Navigator::Season);
        stage.settle();
        const QString key = QStringLiteral("treatment/") + QString::fromStdString(entry.treatment.id);
        const auto dates = stage.app().season()->dates()->entries();
        QVERIFY(std::ranges::any_of(dates, [&](const ChoiceListModel::Entry& each) {
            return each.key == key && each.title.startsWith(QStringLiteral("Take out"));
        }));
        stage.app().season()->open(key);
        QCOMPARE(stage.app().navigator()->page(), Navigator::Treatment);
    }

    void coloniesCanBeLeftOut() {
        Stage stage(Stage::Demo);
        QVERIFY(toTheRecord(stage, "formic-acid"));
        QVERIFY(stage.touch(QStringLiteral("pickColonies")));
        QVERIFY(stage.touch(QStringLiteral("gets-10")));
        QVERIFY(stage.touch(QStringLiteral("gets-4")));
        QVERIFY(stage.touch(QStringLiteral("coloniesDone")));
        QVERIFY2(stage.app().treatment()->coloniesLine().endsWith(QStringLiteral("1, 2, 7")),
                 qPrintable(stage.app().treatment()->coloniesLine()));
    }

    void whatCannotBeIsToldAndNothingIsKept_data() {
        QTest::addColumn<QByteArray>("field");
        QTest::addColumn<QByteArray>("typed");
        QTest::addColumn<QString>("part");
        QTest::newRow("negative withdrawal")
            << QByteArray("withdrawal_days") << QByteArray("-1") << QStringLiteral("cannot be less than 0");
        QTest::newRow("29 February") << QByteArray("first_day") << QByteArray("29 February 2027")
                                     << QStringLiteral("no leap year");
        QTest::newRow("removal before start") << QByteArray("removal_due") << QByteArray("1 June 2026")
                                              << QStringLiteral("before the first day");
        QTest::newRow("end before start")
            << QByteArray("last_day") << QByteArray("2026-06-01") << QStringLiteral("before the first");
        QTest::newRow("no product") << QByteArray("product") << QByteArray(" ") << QStringLiteral("label");
        QTest::newRow("no day") << QByteArray("last_day") << QByteArray("soon")
                                << QStringLiteral("is no date");
    }

    void whatCannotBeIsToldAndNothingIsKept() {
        QFETCH(QByteArray, field);
        QFETCH(QByteArray, typed);
        QFETCH(QString, part);
        Stage stage(Stage::Demo);
        const std::size_t before = kept(stage);
        QVERIFY(toTheRecord(stage, "formic-acid"));
        QVERIFY(type(stage, "product", "formic acid pads"));
        QVERIFY(type(stage, "withdrawal_days", "0"));
        QVERIFY(type(stage, field.constData(), typed.constData()));
        QVERIFY(stage.touch(QStringLiteral("mainAction")));
        QVERIFY(stage.find(QStringLiteral("problem")));
        QVERIFY2(stage.app().treatment()->problem().contains(part),
                 qPrintable(stage.app().treatment()->problem()));
        QCOMPARE(kept(stage), before);
    }

    // Each said once before it is kept.
    void questionsBeforeItIsKept() {
        Stage stage(Stage::Demo);
        QVERIFY(toTheRecord(stage, "formic-acid"));
        QVERIFY(type(stage, "product", "formic acid pads"));
        QVERIFY(type(stage, "first_day", "25 May 2026")); // colony 4 has a course from 20 to 27 May
        QVERIFY(type(stage, "last_day", "20 August 2026"));
        QVERIFY(stage.touch(QStringLiteral("showMore")));
        QVERIFY(type(stage, "expiry", "1 May 2026"));
        QVERIFY(stage.touch(QStringLiteral("mainAction")));
        const QString asked = stage.app().treatment()->questions().join(u'\n');
        for (const char* part : {"expired", "past the turn date, 15 August", "Colony 4 has formic acid pads",
                                 "Supers are on", "withdrawal is not written down"})
            QVERIFY2(asked.contains(QLatin1String(part)), qPrintable(asked));
        QVERIFY(stage.touch(QStringLiteral("lookAgain")));
        QVERIFY(stage.find(QStringLiteral("product")));
        QCOMPARE(kept(stage), std::size_t{4});
    }

    // The page shows what growthOutlook() says (which holds against the reference posterior in
    // season_growth), of the washes since the last treatment alone.
    void growthOnTheColonysPage() {
        Stage stage(Stage::Demo);
        const auto& colonies = stage.app().here()->colonies()->entries();
        const auto at =
            std::ranges::find(colonies, QStringLiteral("7"), &touch::ColonyListModel::Entry::label);
        QVERIFY(at != colonies.end());
        QVERIFY(stage.app().colony()->show(at->colonyId));
        const auto washes = stage.program().store().samplesOf(at->colonyId.toStdString());
        const auto expected = season::growthOutlook(washes, records::Date{2026, 6, 1}, 3, // swarmed on 1 June
                                                    season::growthModelOf(washes));
        QCOMPARE(stage.app().colony()->growth().has_value(), expected.has_value());
        const auto four =
            std::ranges::find(colonies, QStringLiteral("4"), &touch::ColonyListModel::Entry::label);
        QVERIFY(stage.app().colony()->show(four->colonyId));
        const auto shown = stage.app().colony()->growth();
        const auto its = stage.program().store().samplesOf(four->colonyId.toStdString());
        const auto since =
            season::growthOutlook(its, records::Date{2026, 5, 27}, 3, season::growthModelOf(its));
        QVERIFY(shown && since && since->washes == 1);
        QCOMPARE(shown->chance30, since->chance30);
        QCOMPARE(shown->ahead.q50, since->ahead.q50);
        QVERIFY(stage.app().colony()->growthLine().contains(QStringLiteral("assumed")));
    }

    // The law wants every treatment on the record, also one that the handbook has never heard of.
    void anotherSubstanceIsTyped() {
        Stage stage(Stage::Demo);
        stage.app().treat()->show(stage.app().here()->yardId(), {});
        stage.app().navigator()->open(Navigator::Treat);
        stage.settle();
        const QList<ChoiceListModel::Entry>& rows = stage.app().treat()->choices()->entries();
        QCOMPARE(rows.last().key, QStringLiteral("another"));
        stage.app().treat()->openChoice(rows.last().key);
        stage.settle();
        QVERIFY(type(stage, "product", "a new one"));
        QVERIFY(stage.touch(QStringLiteral("mainAction")));
        QVERIFY2(stage.app().treatment()->problem().contains(QStringLiteral("active substance")),
                 qPrintable(stage.app().treatment()->problem()));
        QVERIFY(type(stage, "substance", "lithium salt"));
        QVERIFY(type(stage, "withdrawal_days", "0"));
        QVERIFY(stage.touch(QStringLiteral("mainAction")));
        const auto record = stage.program().store().allTreatments().front();
        QCOMPARE(record.treatment.substance, std::string("lithium salt"));
        QCOMPARE(record.colonyIds.size(), std::size_t{5});
        QCOMPARE(stage.app().treatment()->title(), QStringLiteral("lithium salt"));

        stage.app().treat()->openChoice(
            QStringLiteral("another")); // typed, but known: rotation has to see it
        stage.settle();
        QVERIFY(type(stage, "substance", "Amitraz"));
        QVERIFY(type(stage, "product", "strips"));
        QVERIFY(type(stage, "withdrawal_days", "0"));
        QVERIFY(stage.touch(QStringLiteral("mainAction")));
        if (!stage.app().treatment()->questions().isEmpty())
            QVERIFY(stage.touch(QStringLiteral("keepAllTheSame")));
        QVERIFY(std::ranges::any_of(stage.program().store().allTreatments(), [](const auto& each) {
            return each.treatment.substance == "amitraz" && each.treatment.product == "strips";
        }));
    }

    void whatIsTypedIsNotLostByGoingBack() {
        Stage stage(Stage::Demo);
        QVERIFY(toTheRecord(stage, "formic-acid"));
        QVERIFY(type(stage, "batch", "A-1"));
        QVERIFY(stage.touch(QStringLiteral("back")));
        QVERIFY(stage.touch(QStringLiteral("goOn")));
        QCOMPARE(stage.find(QStringLiteral("batch"))->property("text").toString(), QStringLiteral("A-1"));
        QVERIFY(stage.touch(QStringLiteral("back")));
        QVERIFY(stage.touch(QStringLiteral("leaveIt")));
        QCOMPARE(stage.app().navigator()->page(), Navigator::Choice);
        QCOMPARE(kept(stage), std::size_t{4});
    }

    void theYardPageLeadsToAllItsColonies() {
        Stage stage(Stage::Demo);
        stage.app().yards()->edit(stage.app().here()->yardId());
        stage.settle();
        QVERIFY(stage.touch(QStringLiteral("treatAll")));
        QVERIFY(stage.find(QStringLiteral("treatPage")));
        QCOMPARE(stage.app().treat()->scope()->colonies.size(), std::size_t{5});
    }

    void takenOutIsWrittenDown() {
        Stage stage(Stage::Demo);
        QVERIFY(toTheRecord(stage, "formic-acid"));
        QVERIFY(type(stage, "product", "pads"));
        QVERIFY(type(stage, "withdrawal_days", "14"));
        QVERIFY(stage.touch(QStringLiteral("mainAction")));
        QVERIFY(stage.touch(QStringLiteral("keepAllTheSame")));
        stage.device().clock->advance(std::int64_t{5} * 86'400'000);
        QVERIFY(stage.touch(QStringLiteral("takenOut")));
        const auto entry = newest(stage);
        QVERIFY(entry.treatment.removedOn == (Date{2026, 6, 20}));
        // 14 days after 20 June: the day from which on honey may be taken.
        QVERIFY(records::honeyFrom(entry.treatment) == (Date{2026, 7, 4}));
        QVERIFY2(stage.app().treatment()->honeyLine().contains(QStringLiteral("4 July 2026")),
                 qPrintable(stage.app().treatment()->honeyLine()));
        QVERIFY(!stage.find(QStringLiteral("takenOut")));
        QVERIFY(stage.touch(QStringLiteral("check")));
        QCOMPARE(stage.app().navigator()->page(), Navigator::Check);
        QVERIFY(stage.app().check()->reading().contains(QStringLiteral("Not known yet")));
    }

    void removedIsKeptInTheHistory() {
        Stage stage(Stage::Demo);
        const auto entry = newest(stage);
        QVERIFY(stage.app().treatment()->show(QString::fromStdString(entry.treatment.id)));
        stage.app().navigator()->open(Navigator::Treatment);
        stage.settle();
        QVERIFY(stage.touch(QStringLiteral("removeTreatment")));
        QVERIFY(stage.touch(QStringLiteral("removeIt")));
        QCOMPARE(kept(stage), std::size_t{3});
        const auto still = stage.program().store().treatment(entry.treatment.id);
        QVERIFY(still && still->treatment.removed);
        QCOMPARE(still->colonyIds, entry.colonyIds);
    }

    // The page keeps what it read, but never past a write, this program's or another's, nor for long.
    void theSeasonShowsWhatWasWrittenSince() {
        Stage stage(Stage::Demo);
        store::Store& store = stage.program().store();
        const auto open = [&] {
            stage.app().navigator()->home();
            stage.settle();
            return stage.touch(QStringLiteral("season"));
        };
        const auto* dates = stage.app().season()->dates();
        QVERIFY(open());
        const auto before = dates->entries();
        QVERIFY(open());
        QCOMPARE(dates->entries(), before);

        records::Yard yard = store.yards().front();
        const std::string name = yard.name;
        yard.name = "Renamed here";
        store.save(yard);
        QVERIFY(open());
        QVERIFY(std::ranges::any_of(dates->entries(), [](const ChoiceListModel::Entry& entry) {
            return entry.detail.contains(QStringLiteral("Renamed here"));
        }));

        {
            SQLite::Database other(store.path(), SQLite::OPEN_READWRITE);
            SQLite::Statement rename(other, "UPDATE yard SET name = ? WHERE id = ?");
            rename.bind(1, name);
            rename.bind(2, yard.id);
            rename.exec();
        }
        QVERIFY(open());
        QCOMPARE(dates->entries(), before);

        // Five minutes more than a day ahead of the clock: nothing is reckoned from it yet.
        records::Sample ahead = store.latestFinished(yard.id).front();
        ahead.id = store.newId();
        ahead.startedAtMs = stage.program().services().now().utcMs + 86'400'000 + 5 * 60'000;
        ahead.scoopedAtMs = ahead.startedAtMs;
        store.save(ahead);
        QVERIFY(open());
        QCOMPARE(dates->entries(), before);
        stage.wait(11 * 60'000);
        QVERIFY(open());
        QVERIFY(dates->entries() != before);
    }

    void theCalendarIsWritten() {
        Stage stage(Stage::Demo);
        QVERIFY(stage.touch(QStringLiteral("season")));
        QVERIFY(stage.touch(QStringLiteral("mainAction")));
        QVERIFY2(!stage.app().season()->hasFailed(), qPrintable(stage.app().season()->result()));
        QVERIFY(stage.app().season()->summary().startsWith(QStringLiteral("2 yards")));
        const QString folder = stage.program().services().device.folders->exports().path;
        QFile file(QDir(folder).filePath(QStringLiteral("halfcup-season-2026-06-15.ics")));
        QVERIFY(file.open(QIODevice::ReadOnly));
        const QByteArray text = file.readAll();
        QVERIFY(text.startsWith("BEGIN:VCALENDAR\r\n"));
        QVERIFY(text.contains("DTSTART;VALUE=DATE:20260815")); // the turn date
        QVERIFY(text.contains("Demo"));
        // Each date of the page once, and nothing else: what runs is no date.
        qsizetype dates = 0;
        for (const ChoiceListModel::Entry& each : stage.app().season()->dates()->entries())
            dates += each.note.startsWith(QStringLiteral("until")) ? 0 : 1;
        QVERIFY(dates > 3);
        QCOMPARE(text.count("BEGIN:VEVENT"), dates);
    }

    // efficacy_ratio.csv of the references: rows with counts before and after, with and without untreated
    // ones.
    void theCheckPageSaysWhatTheSeasonFunctionsSay() {
        const auto rows = table("efficacy_ratio.csv");
        if (rows.empty())
            QSKIP("The reference tables are not beside the project.");
        int told = 0;
        for (const auto& row : rows) {
            Stage stage(Stage::Nothing);
            store::Store& store = stage.program().store();
            records::Yard yard;
            yard.id = store.newId();
            yard.name = "The long meadow by the brook";
            store.save(yard);
            std::vector<season::ColonyWashes> expected;
            const bool control = row.at(QStringLiteral("ctrl_pre_k")) != QStringLiteral("NA");
            for (const bool treated : control ? std::vector<bool>{true, false} : std::vector<bool>{true}) {
                records::Colony colony;
                colony.id = store.newId();
                colony.yardId = yard.id;
                colony.label = treated ? std::string("treated") : std::string("left alone");
                store.save(colony);
                const auto figure = [&](const char* name) {
                    return row.at((treated ? QString() : QStringLiteral("ctrl_")) + QLatin1String(name))
                        .toDouble();
                };
                season::ColonyWashes washes{colony.id, treated, false, {}};
                for (const auto& [day, k, n] : {std::tuple(Date{2026, 4, 20}, "pre_k", "pre_n"),
                                                std::tuple(Date{2026, 5, 30}, "post_k", "post_n")}) {
                    auto sample = wash(colony, day, static_cast<std::int64_t>(figure(k)), figure(n), 1);
                    sample.id = store.newId();
                    store.save(sample);
                    washes.washes.push_back(sample);
                }
                expected.push_back(std::move(washes));
            }
            records::GivenTreatment entry;
            entry.treatment.id = store.newId();
            entry.treatment.yardId = yard.id;
            entry.treatment.substance = "formic-acid";
            entry.treatment.product = "pads";
            entry.treatment.firstDay = {2026, 5, 1};
            entry.treatment.lastDay = {2026, 5, 8};
            entry.colonyIds = {expected.front().colonyId};
            store.save(entry);
            QVERIFY(stage.app().check()->show(QString::fromStdString(entry.treatment.id)));
            const auto found = stage.app().check()->found();
            const auto should = season::checkTreatment(entry.treatment, expected, {2026, 6, 15},
                                                       stage.program().services().handbook());
            QCOMPARE(found.controls, control ? 1 : 0);
            QVERIFY(found.outcome == should.outcome);
            QCOMPARE(found.efficacyQ05, should.efficacyQ05);
            QCOMPARE(found.efficacyQ50, should.efficacyQ50);
            QCOMPARE(found.efficacyQ95, should.efficacyQ95);
            QCOMPARE(found.chanceOverMark, should.chanceOverMark);
            told += found.efficacyQ50.has_value() ? 1 : 0;
        }
        QVERIFY(told > 8);
    }

    // season_scenarios.csv of the references: no treatment, middle growth, from 1 per 100 on 15 June.
    void theOutlookIsThatOfTheReferenceSeason() {
        const auto rows = table("season_scenarios.csv");
        if (rows.empty())
            QSKIP("The reference tables are not beside the project.");
        Stage stage(Stage::Nothing);
        store::Store& store = stage.program().store();
        records::Yard yard;
        yard.id = store.newId();
        yard.name = "The long meadow by the brook"; // without a position it is in the north
        store.save(yard);
        records::Colony colony;
        colony.id = store.newId();
        colony.yardId = yard.id;
        colony.label = "by the gate";
        store.save(colony);
        records::Sample sample = wash(colony, {2026, 6, 15}, 3, 300, 1.0);
        sample.id = store.newId();
        store.save(sample);
        QVERIFY(
            stage.app().treat()->show(QString::fromStdString(yard.id), QString::fromStdString(colony.id)));
        stage.app().treat()->openChoice(QStringLiteral("formic-acid"));
        const pictures::OutlookChart picture = stage.app().choice()->picture().chart;
        int compared = 0;
        for (const auto& row : rows) {
            if (row.at(QStringLiteral("scenario")) != QStringLiteral("S1_none") ||
                row.at(QStringLiteral("growth")) != QStringLiteral("base_r0.021"))
                continue;
            const int day = row.at(QStringLiteral("doy")).toInt() - 166; // from 15 June
            if (day < 0 || day >= picture.days())
                continue;
            const double load = row.at(QStringLiteral("lambda_per100")).toDouble();
            QVERIFY2(std::abs(picture.nothing.middle[static_cast<std::size_t>(day)] - load) < 1e-4 * load,
                     qPrintable(QStringLiteral("day %1: %2, not %3")
                                    .arg(day)
                                    .arg(picture.nothing.middle[static_cast<std::size_t>(day)])
                                    .arg(load)));
            ++compared;
        }
        QVERIFY(compared >= 5); // June to October
        QCOMPARE(picture.turnDay, 61);
        QVERIFY(stage.app().choice()->nothingLine().contains(QStringLiteral("5.2 per 100")));
        // Begun later it leaves more mites on the turn date.
        const auto turnDay = static_cast<std::size_t>(picture.turnDay);
        const double now = picture.with.middle[turnDay];
        stage.app().choice()->waitMore();
        stage.app().choice()->waitMore();
        QVERIFY(stage.app().choice()->begins() == (Date{2026, 6, 29}));
        QVERIFY(stage.app().choice()->picture().chart.with.middle[turnDay] != now);
    }

    void reasonsHaveTheirSources() {
        Stage stage(Stage::Demo);
        QVERIFY(toTheChoices(stage));
        for (const ChoiceListModel::Entry& choice : stage.app().treat()->choices()->entries()) {
            stage.app().treat()->openChoice(choice.key);
            QVERIFY(stage.app().choice()->reasons()->count() > 0);
            for (const ChoiceListModel::Entry& reason : stage.app().choice()->reasons()->entries())
                QVERIFY2(!reason.detail.isEmpty(), qPrintable(choice.title + u' ' + reason.title));
            const QString all = stage.app().choice()->cautions().join(u' ');
            QVERIFY(all.contains(QStringLiteral("label")));
            stage.app().navigator()->back();
        }
        stage.settle();
        QCOMPARE(stage.program().qmlWarnings(), QStringList());
    }
};

QTEST_MAIN(SeasonTest)
#include "season_test.moc"
