// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

#include "device/any/standard_folders.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QRegularExpression>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>

#include <sys/stat.h>
#include <unistd.h>

using namespace halfcup::device;

namespace {

/// root may write anywhere; while this lives a test run as root is somebody else. The files made meanwhile
/// are theirs.
class Nobody {
public:
    Nobody()
        : m_wasRoot(geteuid() == 0) {
        if (m_wasRoot && seteuid(kNobody) != 0) {
            m_failed = true;
        }
    }
    ~Nobody() {
        if (m_wasRoot && !m_failed) {
            m_failed = seteuid(0) != 0;
        }
    }
    Nobody(const Nobody&) = delete;
    Nobody& operator=(const Nobody&) = delete;
    [[nodiscard]] bool ok() const { return !m_failed; }
    static constexpr uid_t kNobody = 65534;

private:
    bool m_wasRoot;
    bool m_failed = false;
};

mode_t modeOf(const QString& path) {
    struct stat info {};
    return stat(QFile::encodeName(path).constData(), &info) == 0 ? (info.st_mode & 0777U) : 07777U;
}

} // namespace

class DeviceFolders : public QObject {
    Q_OBJECT
private slots:
    void initTestCase() { QStandardPaths::setTestModeEnabled(true); }
    void init() {
        QTest::failOnWarning(QRegularExpression(QStringLiteral(".*")));
        m_dir = std::make_unique<QTemporaryDir>();
        QVERIFY(m_dir->isValid());
        QVERIFY(chmod(QFile::encodeName(m_dir->path()).constData(), 0777) == 0);
    }

    void dataFolderIsMadeForItsOwnerAlone() {
        const mode_t before = umask(0);
        const Folder folder = StandardFolders(at("a/b/data"), {}).data();
        umask(before);
        QVERIFY(folder.ok());
        QCOMPARE(folder.path, at("a/b/data"));
        QCOMPARE(modeOf(folder.path), mode_t(0700));
        QVERIFY2(QDir(folder.path).isEmpty(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot),
                 "the trial file must be gone");
    }

    void anOpenDataFolderIsClosedAndKeepsWhatIsInIt() {
        QVERIFY(QDir().mkpath(at("data")));
        QFile file(at("data/halfcup.db"));
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write("bees");
        file.close();
        QVERIFY(chmod(QFile::encodeName(at("data")).constData(), 0755) == 0);
        QVERIFY(StandardFolders(at("data"), {}).data().ok());
        QCOMPARE(modeOf(at("data")), mode_t(0700));
        QVERIFY(file.open(QIODevice::ReadOnly));
        QCOMPARE(file.readAll(), QByteArray("bees"));
    }

    void exportsFolderIsNotClosed() {
        QVERIFY(QDir().mkpath(at("out")));
        QVERIFY(chmod(QFile::encodeName(at("out")).constData(), 0755) == 0);
        QVERIFY(StandardFolders({}, at("out")).exports().ok());
        QCOMPARE(modeOf(at("out")), mode_t(0755));
    }

    void namesWithSpacesAndAccents() {
        const Folder folder = StandardFolders(at("Bienen für Müller/ß"), at("mes ruches/été/")).data();
        QVERIFY(folder.ok());
        const Folder out = StandardFolders({}, at("mes ruches/été/")).exports();
        QVERIFY(out.ok());
        QCOMPARE(out.path, at("mes ruches/été"));
    }

    void readOnlyParent() {
        QVERIFY(QDir().mkpath(at("closed")));
        QVERIFY(chmod(QFile::encodeName(at("closed")).constData(), 0555) == 0);
        const Nobody nobody;
        QVERIFY(nobody.ok());
        const StandardFolders folders(at("closed/data"), at("closed/deep/out"));
        QCOMPARE(folders.data().trouble, FolderTrouble::CannotCreate);
        QCOMPARE(folders.data().path, at("closed/data"));
        QCOMPARE(folders.exports().trouble, FolderTrouble::CannotCreate);
        QVERIFY(!QFile::exists(at("closed/data")));
    }

    void readOnlyFolderOfSomebodyElse() {
        if (geteuid() != 0) {
            QSKIP("Only root can make a folder that belongs to somebody else.");
        }
        QVERIFY(QDir().mkpath(at("theirs")));
        QVERIFY(chmod(QFile::encodeName(at("theirs")).constData(), 0755) == 0);
        const Nobody nobody;
        QVERIFY(nobody.ok());
        const StandardFolders folders(at("theirs"), at("theirs"));
        QCOMPARE(folders.data().trouble, FolderTrouble::CannotWrite);
        QCOMPARE(folders.exports().trouble, FolderTrouble::CannotWrite);
    }

    void openFolderOfSomebodyElseCannotBeProtected() {
        if (geteuid() != 0) {
            QSKIP("Only root can make a folder that belongs to somebody else.");
        }
        QVERIFY(QDir().mkpath(at("shared")));
        QVERIFY(chmod(QFile::encodeName(at("shared")).constData(), 0777) == 0);
        const Nobody nobody;
        QVERIFY(nobody.ok());
        QCOMPARE(StandardFolders(at("shared"), {}).data().trouble, FolderTrouble::CannotProtect);
        QVERIFY(StandardFolders({}, at("shared")).exports().ok());
    }

    // Needs no other user: nothing can be made in /proc, not even by root.
    void folderNobodyCanMake() {
        const StandardFolders folders(QStringLiteral("/proc/halfcup/data"), QStringLiteral("/proc/halfcup"));
        QCOMPARE(folders.data().trouble, FolderTrouble::CannotCreate);
        QCOMPARE(folders.exports().trouble, FolderTrouble::CannotCreate);
    }

    void aFileInTheWay() {
        QFile file(at("file"));
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write("keep me");
        file.close();
        QCOMPARE(StandardFolders(at("file"), {}).data().trouble, FolderTrouble::NotAFolder);
        QCOMPARE(StandardFolders({}, at("file/deeper/still")).exports().trouble, FolderTrouble::NotAFolder);
        QVERIFY(file.open(QIODevice::ReadOnly));
        QCOMPARE(file.readAll(), QByteArray("keep me"));
    }

    void eachCallLooksAfresh() {
        const StandardFolders folders(at("data"), {});
        QVERIFY(folders.data().ok());
        QVERIFY(QDir(at("data")).removeRecursively());
        QVERIFY(folders.data().ok());
        QVERIFY(QFile::exists(at("data")));
    }

    // Source: XDG Base Directory Specification: data lies in XDG_DATA_HOME; xdg-user-dirs: documents.
    void defaultsAreTheSystems() {
        const QByteArray before = qgetenv("XDG_DATA_HOME");
        QStandardPaths::setTestModeEnabled(false);
        qputenv("XDG_DATA_HOME", QFile::encodeName(at("share")));
        QCoreApplication::setApplicationName(QStringLiteral("halfcup"));
        const Folder data = StandardFolders().data();
        if (before.isNull()) {
            qunsetenv("XDG_DATA_HOME");
        } else {
            qputenv("XDG_DATA_HOME", before);
        }
        QStandardPaths::setTestModeEnabled(true);
        QVERIFY(data.ok());
        QCOMPARE(data.path, at("share/halfcup"));
    }

    void exportsLieInTheDocuments() {
        const QByteArray before = qgetenv("HOME");
        qputenv("HOME", QFile::encodeName(m_dir->path()));
        const QString documents = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
        const Folder folder = StandardFolders().exports();
        qputenv("HOME", before);
        QVERIFY(folder.ok());
        QVERIFY(folder.path.startsWith(m_dir->path()));
        QCOMPARE(folder.path, documents + QStringLiteral("/Halfcup"));
    }

private:
    [[nodiscard]] QString at(const char* name) const { return m_dir->filePath(QString::fromUtf8(name)); }
    std::unique_ptr<QTemporaryDir> m_dir;
};

QTEST_GUILESS_MAIN(DeviceFolders)
#include "device_folders.moc"
