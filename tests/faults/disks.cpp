// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// A season on a disk that fails at each of its writes in turn, and on one that is nearly full all the time.
// What was acknowledged is there, what was refused is there whole or not at all, the refusal is of a kind
// that has its sentence, and once the disk is sound again the same program goes on. A part of it is run with
// every change, all of it where HALFCUP_ALL_FAULTS is set.
#include "failing_disk.h"
#include "season.h"

#include <QDir>
#include <QStorageInfo>
#include <QTemporaryDir>
#include <QTest>

#include <limits>
#include <random>

using namespace halfcup;
using namespace halfcup::faults;
using namespace halfcup::storetest;
using Trouble = store::StoreError::Kind;

namespace {

bool everything() {
    return qEnvironmentVariableIsSet("HALFCUP_ALL_FAULTS");
}

/// A short year: each act in more than one situation.
const std::vector<Act> season{
    Act::Yard,  Act::Scoop, Act::Tap,    Act::Tap,    Act::Finish, Act::Treat,  Act::Backup,  Act::Merge,
    Act::Scoop, Act::Tap,   Act::Reopen, Act::Tap,    Act::Finish, Act::Remove, Act::Import,  Act::Table,
    Act::Out,   Act::Treat, Act::Merge,  Act::Backup, Act::Scoop,  Act::Tap,    Act::Restore, Act::Yard,
    Act::Scoop, Act::Tap,   Act::Remove, Act::Import, Act::Finish, Act::Table,  Act::Reopen};

const char* nameOf(Failure failure) {
    switch (failure) {
    case Failure::Broken:
        return "broken";
    case Failure::Full:
        return "full";
    case Failure::Dead:
        return "dead";
    case Failure::Crowded:
        return "crowded";
    }
    return "?";
}

/// What the keeper is told must be true: an error of the disk is no damage of the records. Empty where it is.
QString untrue(const Outcome& outcome, const std::string& call, Failure failure) {
    const auto wrong = [&](const char* said) {
        return QString("%1 (%2)").arg(said, QString::fromStdString(outcome.technical));
    };
    if (outcome.backup)
        return wrong("the backup cannot be used");
    if (outcome.file && (*outcome.file == exchange::FileProblem::DiskFull) != wasFull())
        return wrong("another problem of the file");
    if (!outcome.trouble)
        return {};
    // SQLite hands on less than the system says: of a sync only that it failed, of a log beside the database
    // that cannot be made only that it cannot be opened, and of the log's index one thing for another.
    const bool isSync = call.starts_with("fsync") || call.starts_with("fdatasync");
    const bool isOpen = call.starts_with("open");
    const bool isIndex = call.ends_with("-shm");
    switch (*outcome.trouble) {
    case Trouble::NotOurs:
    case Trouble::Newer:
    case Trouble::Damaged:
    case Trouble::FolderMissing:
    case Trouble::Busy:
        return wrong("these records cannot be used");
    case Trouble::NotAllowed:
        if (failure == Failure::Crowded && outcome.technical.find("unable to open") != std::string::npos)
            return {}; // a new name there is no room for
        return isOpen || failure == Failure::Dead ? QString() : wrong("nobody may write there");
    case Trouble::Failed:
        return wasFull() && !isSync && !isIndex ? wrong("something else than that the disk is full")
                                                : QString();
    case Trouble::DiskFull:
        return wasFull() || isIndex || failure == Failure::Crowded ? QString() : wrong("the disk is full");
    case Trouble::CopyFailed:
        break;
    }
    return {};
}

} // namespace

class Disks : public QObject {
    Q_OBJECT

    int m_failures = 0;
    std::map<std::string, int> m_untrue; // and how often
    // In memory where there is such a folder: thousands of syncs.
    QString m_fast = (QDir("/dev/shm").exists() ? "/dev/shm" : QDir::tempPath()) + "/halfcup-XXXXXX";

    /// One season whose nth write fails; false where it has fewer. Anything that is wrong goes into `wrong`.
    bool play(int nth, Failure failure, QString& wrong) {
        const QTemporaryDir phone(m_fast);
        const QTemporaryDir workshop(m_fast);
        Season keeper(phone.path(), workshop.path());
        bool failed = false;
        failAt(phone.path().toStdString(), nth, failure);
        for (std::size_t i = 0; i < season.size() && wrong.isEmpty(); ++i) {
            const Outcome outcome = keeper.tryTo(season[i]);
            const bool first = !failed && hasFailed();
            failed = failed || hasFailed();
            if (!first && outcome.done)
                continue;
            if (!first) {
                wrong = QString("act %1 failed without cause: %2")
                            .arg(i)
                            .arg(QString::fromStdString(outcome.technical));
                break;
            }
            // A dead disk stays so for some more acts.
            for (int more = 0; more < 3 && (failure == Failure::Dead || failure == Failure::Crowded); ++more)
                keeper.tryTo(Act::Tap);
            const std::string call = failedCall();
            repair();
            ++m_failures;
            if (const QString lie = untrue(outcome, call, failure); !lie.isEmpty())
                ++m_untrue[call.substr(0, call.find(' ')) + " " + call.substr(call.rfind('/') + 1) + ": " +
                           lie.toStdString()];
            wrong += keeper.fault();
            if (wrong.isEmpty() && !outcome.done) {
                const Outcome again = keeper.tryTo(season[i]); // the same store goes on
                if (!again.done)
                    wrong = "not once the disk is sound: " + QString::fromStdString(again.technical);
            }
            if (!wrong.isEmpty())
                wrong = QString("act %1, %2\n").arg(i).arg(QString::fromStdString(call)) + wrong;
        }
        repair();
        keeper.close();
        if (wrong.isEmpty())
            wrong = keeper.fault();
        if (wrong.isEmpty())
            if (const QString more = keeper.leftovers();
                !more.isEmpty() && failure != Failure::Dead && !failedCall().starts_with("unlink"))
                wrong = QString("left over after %1: %2").arg(QString::fromStdString(failedCall()), more);
        return failed;
    }

private slots:
    void eachWriteFails_data() {
        QTest::addColumn<int>("failure");
        for (const Failure failure : {Failure::Broken, Failure::Full, Failure::Dead, Failure::Crowded})
            QTest::newRow(nameOf(failure)) << static_cast<int>(failure);
    }
    void eachWriteFails() {
        QFETCH(const int, failure);
        m_untrue.clear();
        m_failures = 0;
        int step = everything() ? 1 : 89;
        int nth = everything() ? 0 : failure * 10;
        int end = std::numeric_limits<int>::max();
        if (const QStringList range = qEnvironmentVariable("HALFCUP_FAULTS").split('-'); range.size() == 2) {
            step = 1; // to look at a finding again
            nth = range[0].toInt();
            end = range[1].toInt();
        }
        QStringList faults;
        QString wrong;
        for (; nth < end && play(nth, static_cast<Failure>(failure), wrong); nth += step) {
            if (!wrong.isEmpty())
                faults.append(QString("write %1: %2").arg(nth).arg(wrong));
            wrong.clear();
        }
        if (!wrong.isEmpty())
            faults.append("at the end: " + wrong);
        for (const auto& [lie, times] : m_untrue)
            qWarning("%d times: %s", times, lie.c_str());
        qInfo("%d writes failed, each %d th of some %d; %d seasons were spoilt", m_failures, step, nth,
              static_cast<int>(faults.size()));
        QVERIFY2(faults.isEmpty(),
                 qPrintable(faults.first(std::min<qsizetype>(3, faults.size())).join("\n")));
        QVERIFY(m_untrue.empty());
        QVERIFY(m_failures >= (everything() ? 300 : 5));
    }

    /// Nearly full all the time, with room for anything from nothing to a few records, for a burst of acts.
    void writesOnANearlyFullDisk() {
        const QTemporaryDir phone;
        const QTemporaryDir workshop;
        const int wanted = everything() ? 500 : 60;
        const int result = inChild([&] {
            if (!mountSmallDisk(phone.path(), "size=24m"))
                return skipped;
            const QString ballast = phone.filePath("ballast");
            Season keeper(phone.path(), workshop.path());
            std::mt19937 chance(20260615);
            if (!keeper.tryTo(Act::Yard).done)
                return 2;
            int refused = 0;
            int written = 0;
            std::set<Act> kinds; // that were refused
            while (refused + written < wanted) {
                const QStorageInfo disk(phone.path());
                const qint64 room = chance() % 3 == 0 ? chance() % 16 : chance() % 200;
                if (!putBytes(ballast, QByteArray(disk.bytesAvailable() - room * 1024, 'b')))
                    return 3;
                Act last = Act::Tap;
                Outcome outcome;
                const int burst = 1 + static_cast<int>(chance() % 4);
                for (int i = 0; i < burst && refused + written < wanted; ++i) {
                    last = chance() % 3 == 0 ? Act::Tap : static_cast<Act>(chance() % acts);
                    outcome = keeper.tryTo(last);
                    (outcome.done ? written : refused) += 1;
                    if (outcome.done)
                        continue;
                    kinds.insert(last);
                    const bool isTold = outcome.trouble == Trouble::DiskFull ||
                                        outcome.trouble == Trouble::CopyFailed ||
                                        outcome.file == exchange::FileProblem::DiskFull;
                    if (!isTold) {
                        qWarning("act %d at %lld KB: %s", static_cast<int>(last), room,
                                 outcome.technical.c_str());
                        return 4;
                    }
                }
                QFile::remove(ballast);
                if (const QString fault = keeper.fault(); !fault.isEmpty()) {
                    qWarning("act %d at %lld KB: %s", static_cast<int>(last), room, qPrintable(fault));
                    return 5;
                }
                if (!outcome.done && !keeper.tryTo(last).done)
                    return 6; // there is room again
                if (const QString fault = keeper.fault(); !fault.isEmpty()) {
                    qWarning("again: %s", qPrintable(fault));
                    return 7;
                }
            }
            keeper.close();
            if (!keeper.fault().isEmpty() || !keeper.leftovers().isEmpty())
                return 8;
            qInfo("%d acts on a nearly full disk: %d acknowledged and there, %d refused whole, of %d kinds",
                  refused + written, written, refused, static_cast<int>(kinds.size()));
            return refused > wanted / 6 && written > wanted / 6 && kinds.size() > (everything() ? 9U : 4U)
                       ? 0
                       : 9;
        });
        if (result == skipped)
            QSKIP("This system lets the test mount no disk of its own, so no disk can be filled.");
        QCOMPARE(result, 0);
    }
};

QTEST_GUILESS_MAIN(Disks)
#include "disks.moc"
