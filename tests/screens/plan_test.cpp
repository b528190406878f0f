// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// A file for another phone, and one from another phone: written, looked at, taken in and taken back by touch.
// What a phone must do with such files is the project's own rule (cpp/exchange, cpp/store); that bytes stay
// as they were is read with SQLite itself.
#include "other_phone.h"
#include "screens.h"

#include "touch/navigator.h"

#include <QCryptographicHash>
#include <QFile>
#include <QFileInfo>
#include <QFileOpenEvent>
#include <QTest>

#include <sqlite3.h>

using namespace halfcup;
using namespace halfcup::screens;
using touch::Navigator;
using touch::PlanController;

namespace {

constexpr std::int64_t hourMs = 3'600'000;

} // namespace

class PlanTest : public QObject {
    Q_OBJECT

    static PlanController& plan(Stage& stage) { return *stage.app().share()->plan(); }

    static QString folder(Stage& stage) { return stage.device().folders->exports().path; }

    static std::int64_t now(Stage& stage) { return stage.device().clock->now().utcMs; }

    static QString text(Stage& stage, const char* name) {
        const QQuickItem* item = stage.find(QLatin1String(name));
        return item ? item->property("text").toString() : QStringLiteral("(not there)");
    }

    static QString counts(Stage& stage) {
        QStringList all;
        for (const auto& entry : plan(stage).counts()->entries())
            all.append(entry.title + QStringLiteral(": ") + entry.detail);
        return all.join(QStringLiteral("; "));
    }

    static void open(Stage& stage, const QString& path) {
        plan(stage).setFolders({folder(stage)});
        stage.app().openFiles({path});
        stage.settle();
        QVERIFY(stage.find(QStringLiteral("planPage")));
    }

    /// All rows of all tables that hold records, as another program reads them.
    static QByteArray dump(Stage& stage) {
        sqlite3* database = nullptr;
        if (sqlite3_open_v2(stage.program().store().path().c_str(), &database, SQLITE_OPEN_READONLY,
                            nullptr) != SQLITE_OK)
            qFatal("The test cannot read the database.");
        QCryptographicHash hash(QCryptographicHash::Sha256);
        for (const char* table : {"revision", "count_event", "yard", "colony", "sample", "event", "device"}) {
            const std::string question = std::string("SELECT * FROM ") + table;
            sqlite3_exec(
                database, question.c_str(),
                [](void* out, int columns, char** values, char**) {
                    for (int i = 0; i < columns; ++i)
                        static_cast<QCryptographicHash*>(out)->addData(
                            QByteArray(values[i] ? values[i] : "\x01") + '\0');
                    return 0;
                },
                &hash, nullptr);
        }
        sqlite3_close(database);
        return hash.result();
    }

    /// What this phone keeps, as a file, taken in by the other.
    static QString giveTo(OtherPhone& other, Stage& stage) {
        const QString path = QDir(folder(stage)).filePath(QStringLiteral("ours.halfcup"));
        store::Outgoing out(stage.program().store());
        if (exchange::writeSafely(path, [&](const exchange::ByteSink& sink) {
                exchange::writeExchange(out, sink, now(stage));
            }))
            qFatal("The test cannot write its file.");
        other.takeIn(path);
        return path;
    }

    static records::Colony colony(store::Store& store, const std::string& label) {
        for (const records::Yard& yard : store.yards())
            for (const records::Colony& colony : store.colonies(yard.id))
                if (colony.label == label)
                    return colony;
        return {};
    }

private slots:
    void twoTouchesFromHereToAWrittenFile() {
        Stage stage(Stage::Demo);
        stage.device().files->setCanShare(true);
        QVERIFY(press(stage, {"share", "mainAction"})); // from Here
        const QStringList files = QDir(folder(stage)).entryList({QStringLiteral("*.halfcup")});
        QCOMPARE(files.size(), 1);
        // SetClock starts on 15 June 2026 at 09:00 UTC, and the test's time zone is UTC.
        QVERIFY2(files.first().startsWith(QLatin1String("halfcup-2026-06-15-09")), qPrintable(files.first()));
        QVERIFY(text(stage, "result").contains(files.first()));
        const QString path = QDir(folder(stage)).filePath(files.first());
        QCOMPARE(stage.device().files->shared(), QStringList{path}); // and into the share sheet
        QCOMPARE(QFile::permissions(path) & (QFile::ReadOther | QFile::ReadGroup), QFile::Permissions());
        OtherPhone other(now(stage));
        other.takeIn(path);
        QCOMPARE(other.store().yards().size(), stage.program().store().yards().size());
        QCOMPARE(other.store().sampleCount(), stage.program().store().sampleCount());
        QVERIFY(other.store().yards().front().position ==
                stage.program().store().yards().front().position); // exact

        QVERIFY(press(stage, {"mainAction"})); // again in the same minute: the first one stays
        QCOMPARE(QDir(folder(stage)).entryList({QStringLiteral("*.halfcup")}).size(), 2);
    }

    void withoutAShareSheetTheFolderIsOffered() {
        Stage stage(Stage::Demo);
        stage.device().files->setCanShare(true, false);
        QVERIFY(press(stage, {"share"}));
        QVERIFY(!stage.find(QStringLiteral("showWritten")));
        QVERIFY(press(stage, {"mainAction"}));
        QVERIFY(stage.device().files->shared().isEmpty());
        QVERIFY(press(stage, {"showWritten"}));
        QCOMPARE(stage.device().files->shared().size(), 1);
    }

    void whatCannotBeWrittenIsSaid() {
        Stage stage(Stage::Demo);
        stage.device().folders->setExportsTrouble(device::FolderTrouble::CannotWrite);
        QVERIFY(press(stage, {"share", "mainAction"}));
        QVERIFY(text(stage, "problem").contains(QLatin1String("cannot be written")));
        QVERIFY(stage.device().files->shared().isEmpty());
    }

    void aPlanSaysTheNumbersAndChangesNothing() {
        Stage stage(Stage::Demo);
        stage.program().services().settings.setReadWhatThisIsNot(true);
        OtherPhone other(now(stage) - 48 * hourMs);
        const records::Yard yard = other.addYard("Mill Race");
        const records::Colony seven = other.addColony(yard, "7");
        other.addColony(yard, "8");
        other.addWash(seven);
        other.wait(hourMs);
        other.addWash(seven);
        other.addStrength(seven, 6);
        const QString path = other.write(folder(stage), QStringLiteral("from the east.halfcup"));
        const QByteArray before = dump(stage);
        open(stage, path);
        QCOMPARE(plan(stage).step(), PlanController::Plan);
        QCOMPARE(counts(stage), QStringLiteral("New: 1 yard, 2 colonies, 2 washes, 1 event"));
        QCOMPARE(text(stage, "headline"),
                 QStringLiteral("6 records new or changed. Nothing of yours is lost."));
        QVERIFY2(text(stage, "writtenLine").contains(QLatin1String("on 13 June 2026 at")),
                 qPrintable(text(stage, "writtenLine")));
        QVERIFY(text(stage, "writtenLine").contains(QLatin1String("It held 1 yard, 2 colonies, 2 washes")));
        QCOMPARE(plan(stage).items()->count(), 6);
        const auto& items = plan(stage).items()->entries();
        QCOMPARE(items.first().section, QStringLiteral("New"));
        QVERIFY(std::ranges::any_of(items, [](const auto& item) {
            return item.title == QLatin1String("Alcohol wash, colony 7") &&
                   item.detail == QLatin1String("Mill Race, 13 June 2026");
        }));
        QVERIFY(std::ranges::any_of(
            items, [](const auto& item) { return item.title == QLatin1String("Strength, colony 7"); }));
        QCOMPARE(dump(stage), before);
        QVERIFY(press(stage, {"back"})); // not taken
        QCOMPARE(dump(stage), before);

        open(stage, path);
        QVERIFY(press(stage, {"mainAction"}));
        QCOMPARE(plan(stage).step(), PlanController::Done);
        QVERIFY(text(stage, "result").startsWith(QLatin1String("6 records taken in.")));
        QVERIFY(!colony(stage.program().store(), "8").id.empty());
        QVERIFY(QFileInfo::exists(QString::fromStdString(
            store::mergeCopyName(stage.program().store().path())))); // as it was before

        const QByteArray after = dump(stage);
        QVERIFY(after != before);
        open(stage, path); // and again
        QCOMPARE(text(stage, "headline"), QStringLiteral("Nothing in it is new: all of it is here already."));
        QCOMPARE(counts(stage), QStringLiteral("Known here already: 1 yard, 2 colonies, 2 washes, 1 event"));
        QCOMPARE(text(stage, "mainAction"), QStringLiteral("Done"));
        QVERIFY(press(stage, {"mainAction"}));
        QVERIFY(stage.find(QStringLiteral("herePage")));
        QCOMPARE(dump(stage), after);
    }

    void bothChangedTheLaterIsKept() {
        Stage stage(Stage::Nothing);
        stage.app().yards()->makeNew();
        QVERIFY(stage.app().yards()->save(QStringLiteral("Alder"), QStringLiteral("3"), {}));
        QVERIFY(stage.app().yards()->addColonies(QStringLiteral("1-3")));
        store::Store& store = stage.program().store();
        OtherPhone other(now(stage));
        giveTo(other, stage);
        const auto rename = [](store::Store& where, const std::string& from, const std::string& to) {
            records::Colony found = colony(where, from);
            found.label = to;
            where.save(found);
        };
        stage.device().clock->advance(hourMs);
        rename(store, "1", "one of ours");
        rename(store, "2", "two of ours");
        other.wait(2 * hourMs);
        rename(other.store(), "1", "one of theirs"); // later than ours
        stage.device().clock->advance(2 * hourMs);
        rename(store, "3", "three of ours"); // later than theirs
        rename(other.store(), "3", "three of theirs");

        open(stage, other.write(folder(stage), QStringLiteral("theirs.halfcup")));
        QCOMPARE(counts(stage),
                 QStringLiteral("Changed on both phones: 2 colonies; Known here already: 1 yard, 1 colony"));
        QStringList notes;
        for (const auto& item : plan(stage).items()->entries())
            notes.append(item.note);
        notes.sort();
        QCOMPARE(notes,
                 (QStringList{QStringLiteral("Label: yours one of ours, theirs one of theirs. Theirs is "
                                             "the later one and is kept: one of theirs."),
                              QStringLiteral("Label: yours three of ours, theirs three of theirs. Yours is "
                                             "the later one and stays: three of ours.")}));
        QVERIFY(press(stage, {"mainAction"}));
        for (const char* label : {"one of theirs", "two of ours", "three of ours"})
            QVERIFY2(!colony(store, label).id.empty(), label);
        giveTo(other, stage); // the same on the other phone
        for (const char* label : {"one of theirs", "two of ours", "three of ours"})
            QVERIFY2(!colony(other.store(), label).id.empty(), label);
    }

    void takenBackAndInAgain() {
        Stage stage(Stage::Demo);
        OtherPhone other(now(stage));
        other.addColony(other.addYard("Mill Race"), "7");
        const QString path = other.write(folder(stage), QStringLiteral("theirs.halfcup"));
        const auto yards = stage.program().store().yards().size();
        open(stage, path);
        QVERIFY(press(stage, {"mainAction"}));
        QCOMPARE(stage.program().store().yards().size(), yards + 1);
        QVERIFY(press(stage, {"undo"})); // asks once
        QVERIFY(press(stage, {"leaveIt"}));
        QCOMPARE(stage.program().store().yards().size(), yards + 1);
        QVERIFY(press(stage, {"undo", "takeItBack"}));
        QCOMPARE(stage.program().store().yards().size(), yards);
        QVERIFY(text(stage, "result").contains(QLatin1String("was taken back")));
        QVERIFY(!stage.find(QStringLiteral("undo")));
        open(stage, path);
        QVERIFY(press(stage, {"mainAction"}));
        QCOMPARE(stage.program().store().yards().size(), yards + 1);

        // Later, from the hub.
        stage.app().navigator()->home();
        QVERIFY(press(stage, {"share"}));
        QCOMPARE(plan(stage).lastLine(), QStringLiteral("theirs.halfcup, 2 records"));
        QVERIFY(press(stage, {"lastTaken", "undo", "takeItBack"}));
        QCOMPARE(stage.program().store().yards().size(), yards);
        QVERIFY(press(stage, {"back"}));
        QCOMPARE(plan(stage).lastNote(), QStringLiteral("taken back"));
    }

    void whatMayBeThereTwiceIsOffered() {
        Stage stage(Stage::Nothing);
        stage.app().yards()->makeNew();
        QVERIFY(stage.app().yards()->save(QStringLiteral("Mill Race"), QStringLiteral("3"), {}));
        stage.app().navigator()->home();
        OtherPhone other(now(stage));
        other.addYard("mill race");
        open(stage, other.write(folder(stage), QStringLiteral("theirs.halfcup")));
        QVERIFY(!stage.find(QStringLiteral("maybeSame")));
        QVERIFY(press(stage, {"mainAction", "maybeSame"}));
        QVERIFY(stage.find(QStringLiteral("samePage")));
    }

    void whatHangsOnItForbidsTakingBack() {
        Stage stage(Stage::Nothing);
        OtherPhone other(now(stage));
        const records::Yard yard = other.addYard("Mill Race");
        open(stage, other.write(folder(stage), QStringLiteral("theirs.halfcup")));
        QVERIFY(press(stage, {"mainAction"}));
        records::Colony ours;
        ours.id = stage.program().store().newId();
        ours.yardId = yard.id;
        ours.label = "ours";
        stage.program().store().save(ours);
        const QByteArray before = dump(stage);
        QVERIFY(press(stage, {"undo", "takeItBack"}));
        QVERIFY(text(stage, "problem").contains(QLatin1String("cannot be taken back any more")));
        QCOMPARE(dump(stage), before);
    }

    void damagedLinesAreNamedAndTheGoodCopyCompletes() {
        Stage stage(Stage::Nothing);
        OtherPhone other(now(stage));
        const records::Yard yard = other.addYard("Mill Race");
        for (const char* label : {"1", "2", "3"})
            other.addColony(yard, label);
        const QString good = other.write(folder(stage), QStringLiteral("good.halfcup"));
        QFile file(good);
        QVERIFY(file.open(QIODevice::ReadOnly));
        QByteArrayList lines = file.readAll().split('\n');
        const auto line =
            std::ranges::find_if(lines, [](const QByteArray& l) { return l.contains("\"2\""); });
        QVERIFY(line != lines.end());
        const auto number = line - lines.begin() + 1;
        line->replace("\"2\"", "\"5\"");
        QFile bad(QDir(folder(stage)).filePath(QStringLiteral("bad.halfcup")));
        QVERIFY(bad.open(QIODevice::WriteOnly) && bad.write(lines.join('\n')) > 0);
        bad.close();
        open(stage, bad.fileName());
        const QStringList troubles = plan(stage).troubles();
        QCOMPARE(troubles.first(), QStringLiteral("Line %1 is damaged and was left out.").arg(number));
        QVERIFY(troubles.last().endsWith(QLatin1String("the good copy completes it.")));
        QVERIFY(press(stage, {"mainAction"}));
        store::Store& store = stage.program().store();
        QVERIFY(!colony(store, "1").id.empty() && colony(store, "2").id.empty() &&
                !colony(store, "3").id.empty());
        open(stage, good);
        QCOMPARE(plan(stage).troubles(), QStringList());
        QCOMPARE(counts(stage), QStringLiteral("New: 1 colony; Known here already: 1 yard, 2 colonies"));
        QVERIFY(press(stage, {"mainAction"}));
        QVERIFY(!colony(store, "2").id.empty());
    }

    void aRefusedFileIsASentence_data() {
        QTest::addColumn<QString>("name");
        QTest::addColumn<QByteArray>("bytes");
        QTest::addColumn<QString>("words");
        QTest::newRow("not ours") << QStringLiteral("picture.halfcup")
                                  << QByteArray("\x89PNG\r\n\x1a\n or so")
                                  << QStringLiteral("is not a file that Halfcup wrote");
        QTest::newRow("empty") << QStringLiteral("empty.halfcup") << QByteArray()
                               << QStringLiteral("is empty");
        QTest::newRow("gone") << QStringLiteral("gone.halfcup") << QByteArray("-")
                              << QStringLiteral("is not there any more");
        QTest::newRow("a name that turns around")
            << QStringLiteral("safe\u202Egpj.halfcup") << QByteArray("x")
            << QStringLiteral("safegpj.halfcup is not");
    }
    void aRefusedFileIsASentence() {
        QFETCH(QString, name);
        QFETCH(QByteArray, bytes);
        QFETCH(QString, words);
        Stage stage(Stage::Demo);
        const QString path = QDir(folder(stage)).filePath(name);
        if (bytes != "-") {
            QFile file(path);
            QVERIFY(file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size());
        }
        const QByteArray before = dump(stage);
        open(stage, path);
        QCOMPARE(plan(stage).step(), PlanController::Files);
        QVERIFY2(text(stage, "problem").contains(words), qPrintable(text(stage, "problem")));
        QCOMPARE(dump(stage), before);
        QCOMPARE(stage.app().messages()->text(), QString());
    }

    void aFolderIsNoFile() {
        Stage stage(Stage::Demo);
        const QString path = QDir(folder(stage)).filePath(QStringLiteral("folder.halfcup"));
        QVERIFY(QDir().mkpath(path));
        open(stage, path);
        QVERIFY(text(stage, "problem").contains(QLatin1String("cannot be read")));
    }

    void aLargeFileSaysThatItIsBeingRead() {
        Stage stage(Stage::Nothing);
        OtherPhone other(now(stage));
        const records::Yard yard = other.addYard("Mill Race");
        const std::string note(2000, 'n');
        other.store().inOneTransaction([&] {
            for (int i = 0; i < 1200; ++i) {
                records::Colony colony;
                colony.id = other.store().newId();
                colony.yardId = yard.id;
                colony.label = std::to_string(i);
                colony.note = note;
                other.store().save(colony);
            }
        });
        const QString path = other.write(folder(stage), QStringLiteral("large.halfcup"));
        QVERIFY(QFileInfo(path).size() > 2'000'000);
        stage.app().openFiles({path});
        QCOMPARE(plan(stage).step(), PlanController::Reading);
        QCOMPARE(plan(stage).mainAction(), QString());
        QTRY_COMPARE(plan(stage).step(), PlanController::Plan);
        QCOMPARE(plan(stage).items()->count(), static_cast<int>(store::MergePlan::mostItems));
        QCOMPARE(plan(stage).moreItems(), QStringLiteral("701 more are not listed one by one."));
        stage.settle();
        QVERIFY(press(stage, {"mainAction"}));
        QTRY_COMPARE(plan(stage).step(), PlanController::Done);
        QCOMPARE(stage.program().store().colonies(yard.id).size(), std::size_t{1200});
    }

    void aFileThatChangedMeanwhileIsShownAgain() {
        Stage stage(Stage::Nothing);
        OtherPhone other(now(stage));
        const records::Yard yard = other.addYard("Mill Race");
        const QString path = other.write(folder(stage), QStringLiteral("theirs.halfcup"));
        open(stage, path);
        other.addColony(yard, "7");
        other.write(folder(stage), QStringLiteral("theirs.halfcup"));
        QVERIFY(press(stage, {"mainAction"}));
        QCOMPARE(plan(stage).step(), PlanController::Plan);
        QVERIFY(text(stage, "problem").contains(QLatin1String("has changed since you looked")));
        QVERIFY(stage.program().store().yards().empty());
        QCOMPARE(counts(stage), QStringLiteral("New: 1 yard, 1 colony"));
        QVERIFY(press(stage, {"mainAction"}));
        QCOMPARE(stage.program().store().yards().size(), std::size_t{1});
    }

    void newestFilesFirstAndTheSystemsChooser() {
        Stage stage(Stage::Nothing);
        plan(stage).setFolders({folder(stage)});
        OtherPhone other(now(stage));
        other.addYard("Mill Race");
        const QDateTime today = QDateTime::currentDateTime();
        int age = 3;
        for (const char* name : {"old.halfcup", "middle.halfcup", "new.halfcup"}) {
            QFile file(other.write(folder(stage), QLatin1String(name)));
            QVERIFY(file.open(QIODevice::ReadWrite) &&
                    file.setFileTime(today.addDays(-age--), QFileDevice::FileModificationTime));
        }
        QVERIFY(press(stage, {"share", "takeIn"}));
        QStringList names;
        for (const auto& entry : plan(stage).files()->entries())
            names.append(entry.title);
        QCOMPARE(names, (QStringList{QStringLiteral("new.halfcup"), QStringLiteral("middle.halfcup"),
                                     QStringLiteral("old.halfcup")}));
        QVERIFY(!stage.find(QStringLiteral("chooseFile")));
        stage.device().files->setCanChoose(true);
        stage.settle();
        QVERIFY(press(stage, {"chooseFile"}));
        QCOMPARE(stage.device().files->endings(), QStringList{QStringLiteral(".halfcup")});
        stage.device().files->cancel();
        QCOMPARE(plan(stage).step(), PlanController::Files);
        QVERIFY(press(stage, {"chooseFile"}));
        stage.device().files->choose(QDir(folder(stage)).filePath(QStringLiteral("old.halfcup")));
        stage.settle();
        QCOMPARE(plan(stage).step(), PlanController::Plan);
    }

    /// A phone whose first records come in a file has not yet been told what the app is not.
    void whatTheAppIsNotIsReadOnceAfterTheFirstFile() {
        Stage stage(Stage::FirstStart);
        OtherPhone other(now(stage));
        other.addYard("Mill Race");
        open(stage, other.write(folder(stage), QStringLiteral("theirs.halfcup")));
        QVERIFY(press(stage, {"mainAction", "mainAction"})); // taken in, done
        QVERIFY(stage.find(QStringLiteral("firstStartPage")));
        QVERIFY(press(stage, {"mainAction"})); // understood
        QVERIFY(stage.find(QStringLiteral("herePage")));
    }

    void openedFromAnotherProgram() {
        Stage stage(Stage::Nothing);
        OtherPhone other(now(stage));
        other.addYard("Mill Race");
        QFileOpenEvent event(other.write(folder(stage), QStringLiteral("theirs.halfcup")));
        QCoreApplication::sendEvent(qGuiApp, &event);
        stage.settle();
        QVERIFY(stage.find(QStringLiteral("planPage")));
        QCOMPARE(counts(stage), QStringLiteral("New: 1 yard"));

        QFile table(QDir(folder(stage)).filePath(QStringLiteral("washes.csv")));
        QVERIFY(table.open(QIODevice::WriteOnly) &&
                table.write("Date,Hive,Mites,Bees\n18/05/2023,4,9,300\n") > 0);
        table.close();
        stage.app().openFiles({table.fileName()});
        stage.settle();
        QVERIFY(stage.find(QStringLiteral("importPage")));
        QCOMPARE(stage.app().tableImport()->fileName(), QStringLiteral("washes.csv"));

        stage.app().openFiles({QStringLiteral("/a.halfcup"), QStringLiteral("/b.halfcup")});
        QVERIFY(stage.app().messages()->text().startsWith(QLatin1String("2 files were opened at once.")));
        stage.app().messages()->dismiss();
        stage.app().openFiles({QStringLiteral("/holiday.jpeg")});
        QVERIFY(
            stage.app().messages()->text().startsWith(QLatin1String("holiday.jpeg is none of the files")));
    }
};

QTEST_MAIN(PlanTest)
#include "plan_test.moc"
