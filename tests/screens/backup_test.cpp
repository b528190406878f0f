// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Backups through the real pages: made, found again, looked into, asked back. With HALFCUP_PICTURES set to a
// folder, the pictures are left there.
#include "measure.h"
#include "screens.h"

#include "store/restore.h"
#include "touch/navigator.h"
#include "touch/restoring.h"

#include <QDir>
#include <QTest>

using namespace halfcup;
using namespace halfcup::screens;
using touch::BackupController;

class BackupTest : public QObject {
    Q_OBJECT

    static BackupController& backup(Stage& stage) { return *stage.app().backup(); }

    static bool toThePage(Stage& stage) {
        stage.app().navigator()->home();
        stage.app().navigator()->open(touch::Navigator::Backup);
        stage.settle();
        return stage.find(QStringLiteral("backupPage"));
    }

    static bool pick(Stage& stage, int row) {
        return stage.touch(QStringLiteral("backup-") + backup(stage).backups()->entries().at(row).key);
    }

    static QString exportsOf(Stage& stage) { return stage.device().platform.folders->exports().path; }

    /// A finished wash of the first colony, kept without the pages.
    static void keepWash(Stage& stage) {
        store::Store& store = stage.program().store();
        const records::Yard yard = store.yards().front();
        records::Sample sample;
        sample.id = store.newId();
        sample.yardId = yard.id;
        sample.colonyId = store.colonies(yard.id).front().id;
        sample.state = records::SampleState::Finished;
        sample.startedAtMs = stage.program().services().now().utcMs;
        store.save(sample);
    }

    static QStringList measured(Stage& stage, const QString& name) {
        QStringList wrong;
        for (const QSize& size : {QSize(320, 568), QSize(360, 740), QSize(412, 915)}) {
            stage.resize(size);
            const QString sized = QStringLiteral("%1 %2x%3").arg(name).arg(size.width()).arg(size.height());
            for (const bool dusk : {true, false}) {
                stage.setDusk(dusk);
                wrong += whatIsWrong(stage, sized, 1);
            }
            const QString folder = qEnvironmentVariable("HALFCUP_PICTURES");
            if (!folder.isEmpty()) {
                QString file = sized + QLatin1String(".png");
                QDir().mkpath(folder);
                stage.picture().save(QDir(folder).filePath(file.replace(u' ', u'-')));
            }
        }
        stage.resize({360, 740});
        return wrong;
    }

private slots:
    void madeAndFoundAgain() {
        Stage stage(Stage::Demo);
        QVERIFY(press(stage, {"season", "corner", "keepSafe"}));
        QVERIFY(stage.find(QStringLiteral("backupPage")));
        QCOMPARE(backup(stage).lastLine(), QStringLiteral("No backup yet"));
        QCOMPARE(backup(stage).backups()->count(), 0);
        QVERIFY(backup(stage).newLine().endsWith(QLatin1String(" washes in no backup yet")));
        QVERIFY(press(stage, {"mainAction"}));
        QVERIFY2(!backup(stage).hasFailed(), qPrintable(backup(stage).result()));
        QVERIFY(backup(stage).lastLine().startsWith(QLatin1String("Last backup: ")));
        QCOMPARE(backup(stage).newLine(), QString());
        QCOMPARE(backup(stage).backups()->count(), 1);
        const QString path = backup(stage).backups()->entries().front().key;
        const QString day = QString::fromStdString(records::toIso(stage.program().services().today()));
        QCOMPARE(path, exportsOf(stage) + QStringLiteral("/halfcup-%1.halfcup-backup").arg(day));
        const store::BackupContents contents = store::lookInto(path.toStdString());
        QVERIFY(contents.isBackup);
        QCOMPARE(contents.washes, stage.program().store().finishedWashes());
        QVERIFY(press(stage, {"mainAction"})); // a second one takes no other's place
        QCOMPARE(backup(stage).backups()->count(), 2);
        QVERIFY(QFile::exists(exportsOf(stage) + QStringLiteral("/halfcup-%1-2.halfcup-backup").arg(day)));
    }

    void looksIntoOneAndAsksOnce() {
        Stage stage(Stage::Demo);
        QVERIFY(toThePage(stage) && press(stage, {"mainAction"}) && pick(stage, 0));
        QVERIFY(backup(stage).canPutBack());
        const auto& facts = backup(stage).contents()->entries();
        QVERIFY2(facts.at(1).detail.startsWith(QLatin1String("2 yards, 9 colonies, ")),
                 qPrintable(facts.at(1).detail));
        QVERIFY(press(stage, {"putBack", "leaveAll"}));
        QVERIFY(stage.program().restoreFrom().isEmpty());
        QVERIFY(pick(stage, 0) && press(stage, {"putBack"}));
        QVERIFY(backup(stage).question().contains(QLatin1String("not thrown away")));
        QVERIFY(press(stage, {"putItBack"}));
        QCOMPARE(stage.program().restoreFrom(), backup(stage).backups()->entries().front().key);
    }

    void remindsAfterTenWashesAndNotWithout() {
        Stage stage(Stage::Nothing);
        QVERIFY(toThePage(stage));
        QCOMPARE(backup(stage).newLine(), QString());
        QCOMPARE(backup(stage).reminder(), QString());
        stage.app().yards()->makeNew();
        QVERIFY(stage.app().yards()->save(QStringLiteral("Alder"), QStringLiteral("3"), {}));
        QVERIFY(stage.app().yards()->addColonies(QStringLiteral("1")));
        QVERIFY(toThePage(stage) && press(stage, {"mainAction"}));
        for (int washes = 1; washes <= store::washesUntilReminder; ++washes) {
            keepWash(stage);
            QVERIFY(toThePage(stage));
            QCOMPARE(backup(stage).newLine(), washes == 1
                                                  ? QStringLiteral("1 wash in no backup yet")
                                                  : QStringLiteral("%1 washes in no backup yet").arg(washes));
            QCOMPARE(backup(stage).reminder().isEmpty(), washes < 10);
        }
        stage.app().navigator()->home();
        stage.settle();
        QVERIFY(!stage.find(QStringLiteral("backupReminder"))); // never at the hive
        QVERIFY(press(stage, {"season"}));
        QVERIFY(stage.find(QStringLiteral("backupReminder")));
        QVERIFY(press(stage, {"backupReminder", "mainAction"}));
        QCOMPARE(backup(stage).reminder(), QString());
        QVERIFY(press(stage, {"back"}));
        QVERIFY(!stage.find(QStringLiteral("backupReminder")));
    }

    void whatIsNoBackupSaysSo() {
        Stage stage(Stage::Demo);
        QVERIFY(toThePage(stage) && press(stage, {"mainAction"}));
        const QString good = backup(stage).backups()->entries().front().key;
        QFile whole(good);
        QVERIFY(whole.open(QIODevice::ReadOnly));
        const QByteArray bytes = whole.readAll();
        const auto says = [&](const QByteArray& content, const char* sentence) {
            const QString path = exportsOf(stage) + QLatin1String("/try.halfcup-backup");
            QFile file(path);
            if (!file.open(QIODevice::WriteOnly) || file.write(content) != content.size())
                return false;
            file.close();
            backup(stage).pick(path);
            if (backup(stage).canPutBack() ||
                !backup(stage).pickedProblem().contains(QLatin1String(sentence)))
                qWarning() << backup(stage).pickedProblem();
            return !backup(stage).canPutBack() &&
                   backup(stage).pickedProblem().contains(QLatin1String(sentence)) &&
                   backup(stage).contents()->count() == 0;
        };
        QVERIFY(says({}, "is empty"));
        QVERIFY(says("Dear keeper", "is no backup of Halfcup"));
        QVERIFY(says(bytes.left(bytes.size() / 2), "Copy it again"));
        QByteArray changed = bytes;
        changed.replace("Alder Bend", "Older Bend");
        QVERIFY(says(changed, "is damaged"));
        backup(stage).putBack(); // nothing is picked
        QVERIFY(stage.program().restoreFrom().isEmpty());
    }

    void placesThatCannotBeWritten() {
        Stage stage(Stage::Demo);
        QVERIFY(toThePage(stage));
        stage.device().folders->setExportsTrouble(device::FolderTrouble::CannotWrite);
        QVERIFY(press(stage, {"mainAction"}));
        QVERIFY(backup(stage).hasFailed());
        QVERIFY(backup(stage).result().endsWith(QLatin1String("No backup was made.")));
        QCOMPARE(backup(stage).lastLine(), QStringLiteral("No backup yet"));
        QCOMPARE(measured(stage, QStringLiteral("backup failed")), QStringList());
    }

    /// What the program does between two of itself: the sentence that the keeper reads then.
    void theSentenceAfterwards() {
        QTemporaryDir folder;
        const QString path = folder.filePath(QStringLiteral("halfcup.db"));
        QString made;
        Stage stage(Stage::Demo);
        QVERIFY(toThePage(stage) && press(stage, {"mainAction"}));
        made = backup(stage).backups()->entries().front().key;
        const QString first = touch::putBack(made, path, stage.device().platform);
        QVERIFY2(first.contains(QLatin1String("was put back: ")) &&
                     !first.contains(QLatin1String("is safe as")),
                 qPrintable(first));
        const QString second = touch::putBack(made, path, stage.device().platform);
        QVERIFY2(second.contains(QLatin1String("is safe as halfcup.db.before-restore-")), qPrintable(second));
        const QString gone = touch::putBack(made + u'x', path, stage.device().platform);
        QVERIFY2(
            gone.startsWith(QLatin1String("The backup was not put back, and your records are as they were.")),
            qPrintable(gone));
    }

    void measuredAtAllSizes() {
        Stage stage(Stage::Demo);
        QVERIFY(toThePage(stage));
        QStringList wrong = measured(stage, QStringLiteral("backup none"));
        QVERIFY(press(stage, {"mainAction"}));
        wrong += measured(stage, QStringLiteral("backup made"));
        QVERIFY(toThePage(stage));
        wrong += measured(stage, QStringLiteral("backup"));
        QVERIFY(pick(stage, 0));
        wrong += measured(stage, QStringLiteral("backup contents"));
        QVERIFY(press(stage, {"putBack"}));
        wrong += measured(stage, QStringLiteral("backup ask"));
        for (int i = 0; i < store::washesUntilReminder; ++i)
            keepWash(stage);
        stage.app().navigator()->home();
        stage.settle();
        QVERIFY(press(stage, {"season"}) && !stage.find(QStringLiteral("backupReminder"))); // all invented
        records::Yard own;
        own.id = stage.program().store().newId();
        own.name = "Alder";
        stage.program().store().save(own);
        stage.app().navigator()->home();
        stage.settle();
        QVERIFY(press(stage, {"season"}) && stage.find(QStringLiteral("backupReminder")));
        wrong += measured(stage, QStringLiteral("season reminder"));
        QVERIFY2(wrong.isEmpty(), qPrintable(wrong.join(u'\n')));
    }
};

QTEST_MAIN(BackupTest)
#include "backup_test.moc"
