// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Writing beside, then swapping: with full disks, forbidden folders and limits that are real.
#include "exchange/safe_file.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>
#include <QTest>

#include <csignal>
#include <functional>
#include <grp.h>
#include <sched.h>
#include <stdexcept>
#include <sys/mount.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

using namespace halfcup::exchange;

namespace {

constexpr int skipped = 77;
const std::string oldContent = "the export of last week\r\n";

std::optional<FileError> writeText(const QString& path, const std::string& text) {
    return writeSafely(path, [&](const ByteSink& sink) { sink(text); });
}

/// Much more than a small disk holds, in many pieces as an export comes.
std::optional<FileError> writeALot(const QString& path) {
    return writeSafely(path, [](const ByteSink& sink) {
        const std::string row(1000, 'x');
        for (int i = 0; i < 2000; ++i)
            sink(row);
    });
}

std::string content(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll().toStdString() : "(cannot be read)";
}

QStringList namesIn(const QString& folder) {
    return QDir(folder).entryList(QDir::AllEntries | QDir::Hidden | QDir::System | QDir::NoDotAndDotDot);
}

void makeOldFile(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(oldContent.c_str()) < 0)
        qFatal("The test cannot write its own file.");
}

/// Runs work in a process of its own, which may give up rights and mount disks; its exit code.
int inChild(const std::function<int()>& work) {
    const pid_t child = fork();
    if (child == 0)
        _exit(work());
    int status = 0;
    waitpid(child, &status, 0);
    return WIFEXITED(status) ? WEXITSTATUS(status) : 1000 + status;
}

bool writeTo(const char* path, const std::string& text) {
    QFile file(path);
    return file.open(QIODevice::WriteOnly | QIODevice::Unbuffered) &&
           file.write(text.c_str()) == static_cast<qint64>(text.size());
}

/// Lets this process mount disks that no other sees. One that is not root becomes root of a namespace of its
/// own, where the system allows that.
bool mayMount() {
    const uid_t user = geteuid();
    const gid_t group = getegid();
    if (unshare(CLONE_NEWNS | (user == 0 ? 0 : CLONE_NEWUSER)) != 0)
        return false;
    if (user == 0)
        return true;
    return writeTo("/proc/self/setgroups", "deny") &&
           writeTo("/proc/self/uid_map", "0 " + std::to_string(user) + " 1") &&
           writeTo("/proc/self/gid_map", "0 " + std::to_string(group) + " 1");
}

/// Mounts an empty disk in memory over the folder, seen by this process alone.
bool mountSmallDisk(const QString& folder) {
    return mayMount() && mount("none", "/", nullptr, MS_REC | MS_PRIVATE, nullptr) == 0 &&
           mount("tmpfs", folder.toUtf8().constData(), "tmpfs", 0, "size=64k") == 0;
}

/// A number for each way in which a failed write can be wrong; 0 where all is well.
int judgeFailure(const std::optional<FileError>& error, FileProblem expected, const QString& path,
                 const QStringList& namesBefore) {
    if (!error)
        return 2;
    if (error->problem != expected)
        return 10 + static_cast<int>(error->problem);
    if (error->technical.isEmpty())
        return 3;
    const QString folder = QFileInfo(path).path();
    if (namesIn(folder) != namesBefore)
        return 4;
    if (namesBefore.contains(QFileInfo(path).fileName()) && content(path) != oldContent)
        return 5;
    return 0;
}

} // namespace

class ExchangeFileTest : public QObject {
    Q_OBJECT

private slots:
    void newFileIsWholeAndItsOwnersAlone() {
        const QTemporaryDir folder;
        const QString path = folder.filePath("samples.csv");
        umask(0); // whatever the phone's default
        QVERIFY(!writeText(path, "one\r\n\xF0\x9F\x90\x9D"));
        umask(022);
        QCOMPARE(content(path), std::string("one\r\n\xF0\x9F\x90\x9D"));
        QCOMPARE(namesIn(folder.path()), QStringList{"samples.csv"});
        struct stat info {};
        QCOMPARE(stat(path.toUtf8().constData(), &info), 0);
        QCOMPARE(info.st_mode & 07777, 0600U);
    }

    void oldFileIsReplacedAndClosedToOthers() {
        const QTemporaryDir folder;
        const QString path = folder.filePath("samples.csv");
        makeOldFile(path);
        QVERIFY(QFile::setPermissions(path, QFile::ReadOwner | QFile::WriteOwner | QFile::ReadOther));
        QVERIFY(!writeText(path, "new"));
        QCOMPARE(content(path), std::string("new"));
        struct stat info {};
        QCOMPARE(stat(path.toUtf8().constData(), &info), 0);
        QCOMPARE(info.st_mode & 07777, 0600U);
    }

    void oldFileStandsUntilTheNewOneIsComplete() {
        const QTemporaryDir folder;
        const QString path = folder.filePath("samples.csv");
        makeOldFile(path);
        QVERIFY(!writeSafely(path, [&](const ByteSink& sink) {
            for (int i = 0; i < 500; ++i) {
                sink(std::string(1000, 'y'));
                QCOMPARE(content(path), oldContent);
            }
        }));
        QCOMPARE(content(path).size(), std::size_t{500'000});
    }

    void emptyFileIsAFile() {
        const QTemporaryDir folder;
        QVERIFY(!writeSafely(folder.filePath("samples.csv"), [](const ByteSink&) {}));
        QCOMPARE(content(folder.filePath("samples.csv")), std::string());
    }

    void missingFolder() {
        const QTemporaryDir folder;
        const auto error = writeText(folder.filePath("not there/samples.csv"), "x");
        QVERIFY(error);
        QCOMPARE(error->problem, FileProblem::FolderMissing);
        QVERIFY(error->technical.contains("not there"));
        QVERIFY(namesIn(folder.path()).isEmpty());
    }

    void fileInPlaceOfTheFolder() {
        const QTemporaryDir folder;
        makeOldFile(folder.filePath("a"));
        QCOMPARE(writeText(folder.filePath("a/samples.csv"), "x")->problem, FileProblem::FolderMissing);
        QCOMPARE(content(folder.filePath("a")), oldContent);
    }

    void folderInPlaceOfTheFile() {
        const QTemporaryDir folder;
        QVERIFY(QDir(folder.path()).mkdir("samples.csv"));
        QCOMPARE(writeText(folder.filePath("samples.csv"), "x")->problem, FileProblem::NotAFile);
        QCOMPARE(namesIn(folder.path()), QStringList{"samples.csv"});
    }

    void emptyPathIsRefused() { QVERIFY(writeText(QString(), "x")); }

    void exceptionOfTheContentLeavesTheOldFile() {
        const QTemporaryDir folder;
        const QString path = folder.filePath("samples.csv");
        makeOldFile(path);
        const auto write = [&] {
            static_cast<void>(writeSafely(path, [](const ByteSink& sink) {
                sink("half of it");
                throw std::runtime_error("the database is damaged");
            }));
        };
        QVERIFY_EXCEPTION_THROWN(write(), std::runtime_error);
        QCOMPARE(content(path), oldContent);
        QCOMPARE(namesIn(folder.path()), QStringList{"samples.csv"});
    }

    void limitOnTheSizeOfAFile() { // RLIMIT_FSIZE: a real refusal of the system, whoever runs the test
        const QTemporaryDir folder;
        const QString path = folder.filePath("samples.csv");
        makeOldFile(path);
        const QStringList before = namesIn(folder.path());
        QCOMPARE(inChild([&] {
                     std::signal(SIGXFSZ, SIG_IGN);
                     const rlimit limit{50'000, 50'000};
                     setrlimit(RLIMIT_FSIZE, &limit);
                     return judgeFailure(writeALot(path), FileProblem::DiskFull, path, before);
                 }),
                 0);
    }

    void fullDisk_data() {
        QTest::addColumn<bool>("withOldFile");
        QTest::newRow("nothing there before") << false;
        QTest::newRow("an old file there") << true;
    }
    void fullDisk() { // a disk of 64 KB in memory, in a mount namespace of its own
        QFETCH(const bool, withOldFile);
        const QTemporaryDir folder;
        const QString path = folder.filePath("samples.csv");
        const int result = inChild([&] {
            if (!mountSmallDisk(folder.path()))
                return skipped;
            if (withOldFile)
                makeOldFile(path);
            const int judged =
                judgeFailure(writeALot(path), FileProblem::DiskFull, path, namesIn(folder.path()));
            if (judged != 0)
                return judged;
            return writeText(path, "small enough") ? 6 : content(path) == "small enough" ? 0 : 7;
        });
        if (result == skipped)
            QSKIP("This system lets the test mount no disk of its own, so no disk can be filled.");
        QCOMPARE(result, 0);
    }

    void readOnlyDisk() {
        const QTemporaryDir folder;
        const QString path = folder.filePath("samples.csv");
        const int result = inChild([&] {
            if (!mountSmallDisk(folder.path()))
                return skipped;
            makeOldFile(path);
            if (mount("tmpfs", folder.path().toUtf8().constData(), "tmpfs", MS_REMOUNT | MS_RDONLY,
                      nullptr) != 0)
                return skipped;
            return judgeFailure(writeText(path, "x"), FileProblem::NotAllowed, path, {"samples.csv"});
        });
        if (result == skipped)
            QSKIP("This system lets the test mount no disk of its own, so there is no read-only one.");
        QCOMPARE(result, 0);
    }

    void readOnlyFolder() { // root may write anywhere, so the child becomes nobody
        const QTemporaryDir folder;
        const QString inside = folder.filePath("exports");
        QVERIFY(QDir(folder.path()).mkdir("exports"));
        const QString path = inside + "/samples.csv";
        makeOldFile(path);
        QCOMPARE(chmod(path.toUtf8().constData(), 0644), 0);
        QCOMPARE(chmod(folder.path().toUtf8().constData(), 0755), 0);
        QCOMPARE(chmod(inside.toUtf8().constData(), 0555), 0);
        const int result = inChild([&] {
            constexpr uid_t nobody = 65534;
            if (geteuid() == 0 && (setgroups(0, nullptr) != 0 || setgid(nobody) != 0 || setuid(nobody) != 0))
                return skipped;
            if (access(inside.toUtf8().constData(), R_OK | X_OK) != 0)
                return skipped;
            return judgeFailure(writeText(path, "x"), FileProblem::NotAllowed, path, {"samples.csv"});
        });
        chmod(inside.toUtf8().constData(), 0755); // so that the folder can be taken away
        if (result == skipped)
            QSKIP("The test runs as root and cannot become another user, and root may write anywhere.");
        QCOMPARE(result, 0);
    }
};

QTEST_GUILESS_MAIN(ExchangeFileTest)
#include "exchange_file.moc"
