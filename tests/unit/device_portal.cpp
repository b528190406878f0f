// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Handing files out and taking them in, by a portal on a bus of the test's own that answers as the real one
// does.
// Source of calls and signals: the documentation of xdg-desktop-portal, interfaces
// org.freedesktop.portal.FileChooser (version 4), OpenURI (version 5) and Request.
#include "device/fake/fake_file_handover.h"
#include "device/linux/portal_file_handover.h"
#include "device_bus_services.h"

#include <QDBusArgument>
#include <QDBusObjectPath>
#include <QDBusUnixFileDescriptor>
#include <QDBusVariant>
#include <QElapsedTimer>
#include <QFile>
#include <QFileInfo>
#include <QRegularExpression>
#include <QSignalSpy>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>

#include <optional>

using namespace halfcup::device;
using namespace halfcup::device::test;

namespace {

const QString kPortal = QStringLiteral("org.freedesktop.portal.Desktop");
const QString kPortalPath = QStringLiteral("/org/freedesktop/portal/desktop");

/// What stands between an option of a call and what it holds.
QVariant plain(const QVariant& value) {
    return value.canConvert<QDBusVariant>() ? value.value<QDBusVariant>().variant() : value;
}

QVariantMap optionsOf(const QDBusMessage& call) {
    return qdbus_cast<QVariantMap>(call.arguments().at(2));
}

class Portal : public Service {
public:
    explicit Portal(const QString& address)
        : Service(address, kPortal, kPortalPath, [this](const QDBusMessage& call) { return answer(call); }) {}

    std::optional<uint> chooser = 4; // version; nothing: nobody stands behind it
    std::optional<uint> opener = 5;
    bool namesItsRequests = false; // as portals before 0.9 did
    bool refuses = false;
    bool isDeaf = false;
    int questions = 0;
    QString request; // where the answer to the last question goes
    QStringList shown;

    bool handleMessage(const QDBusMessage& message, const QDBusConnection& connection) override {
        m_connection = connection;
        return Service::handleMessage(message, connection);
    }

    void respond(uint response, const QStringList& uris) {
        QDBusMessage signal = QDBusMessage::createSignal(
            request, QStringLiteral("org.freedesktop.portal.Request"), QStringLiteral("Response"));
        signal << response << QVariantMap{{QStringLiteral("uris"), uris}};
        m_connection.send(signal);
    }

private:
    QDBusMessage answer(const QDBusMessage& call) {
        if (isDeaf)
            return {};
        if (call.member() == QLatin1String("Get")) {
            const auto version =
                call.arguments().at(0).toString().endsWith(QLatin1String("FileChooser")) ? chooser : opener;
            return version
                       ? call.createReply(QVariant::fromValue(QDBusVariant(*version)))
                       : call.createErrorReply(QDBusError::InvalidArgs, QStringLiteral("No such interface"));
        }
        if (refuses)
            return call.createErrorReply(QDBusError::Failed, QStringLiteral("no"));
        if (call.member() == QLatin1String("OpenFile") && call.signature() == QLatin1String("ssa{sv}")) {
            ++questions;
            const QString sender = call.service().mid(1).replace(u'.', u'_');
            const QString token = namesItsRequests
                                      ? QStringLiteral("own")
                                      : optionsOf(call).value(QStringLiteral("handle_token")).toString();
            request = QStringLiteral("%1/request/%2/%3").arg(kPortalPath, sender, token);
            return call.createReply(QVariant::fromValue(QDBusObjectPath(request)));
        }
        if (call.member() == QLatin1String("OpenDirectory") && call.signature() == QLatin1String("sha{sv}")) {
            const auto file = call.arguments().at(1).value<QDBusUnixFileDescriptor>();
            shown.append(
                QFileInfo(QStringLiteral("/proc/self/fd/%1").arg(file.fileDescriptor())).symLinkTarget());
            return call.createReply(QVariant::fromValue(QDBusObjectPath(kPortalPath + QLatin1String("/r"))));
        }
        return call.createErrorReply(QDBusError::InvalidArgs, QStringLiteral("not understood"));
    }

    QDBusConnection m_connection{QString()};
};

} // namespace

class DevicePortal : public QObject {
    Q_OBJECT
private slots:
    void initTestCase() {
        if (QStandardPaths::findExecutable(QStringLiteral("dbus-daemon")).isEmpty())
            QSKIP("dbus-daemon is not installed here (package dbus-daemon).");
    }
    void init() {
        QTest::failOnWarning(QRegularExpression(QStringLiteral(".*")));
        m_daemon = std::make_unique<PrivateBus>();
        QVERIFY2(!m_daemon->address.isEmpty(), "the private bus did not start");
        m_bus = SessionBus::openAt(m_daemon->address);
        QVERIFY(m_bus->isConnected());
    }
    void cleanup() {
        m_bus.reset();
        m_daemon.reset();
    }

    void theKeeperChoosesAFile() {
        Portal portal(m_daemon->address);
        PortalFileHandover files(m_bus);
        QVERIFY(!files.canChoose()); // not known yet
        QTRY_VERIFY(files.canChoose());
        QSignalSpy chosen(&files, &FileHandover::chosen);
        QSignalSpy cancelled(&files, &FileHandover::cancelled);
        files.chooseFile(QStringLiteral("Take in a file"),
                         {QStringLiteral(".halfcup"), QStringLiteral(".txt")});
        QTRY_COMPARE(portal.questions, 1);
        const QDBusMessage question = portal.calls.last();
        QCOMPARE(question.interface(), QStringLiteral("org.freedesktop.portal.FileChooser"));
        QCOMPARE(question.arguments().at(1).toString(), QStringLiteral("Take in a file"));
        const auto filters =
            plain(optionsOf(question).value(QStringLiteral("filters"))).value<QDBusArgument>();
        QCOMPARE(filters.currentSignature(), QStringLiteral("a(sa(us))"));
        QString name;
        QStringList patterns;
        filters.beginArray();
        filters.beginStructure();
        filters >> name;
        filters.beginArray();
        while (!filters.atEnd()) {
            uint kind = 9;
            QString pattern;
            filters.beginStructure();
            filters >> kind >> pattern;
            filters.endStructure();
            QCOMPARE(kind, 0U);
            patterns.append(pattern);
        }
        filters.endArray();
        filters.endStructure();
        QVERIFY(filters.atEnd());
        filters.endArray();
        QCOMPARE(patterns, (QStringList{QStringLiteral("*.halfcup"), QStringLiteral("*.txt")}));

        portal.respond(0, {QStringLiteral("file:///tmp/k%C3%B6nig%20west.halfcup")});
        QTRY_COMPARE(chosen.count(), 1);
        QCOMPARE(chosen.first().first().toString(), QStringLiteral("/tmp/könig west.halfcup"));
        QCOMPARE(cancelled.count(), 0);
        portal.respond(0, {QStringLiteral("file:///tmp/again")}); // nobody asked
        QTest::qWait(50);
        QCOMPARE(chosen.count(), 1);
    }

    void whatIsNoAnswerIsACancel_data() {
        QTest::addColumn<uint>("response");
        QTest::addColumn<QStringList>("uris");
        QTest::newRow("cancelled") << 1U << QStringList();
        QTest::newRow("ended in another way") << 2U << QStringList{QStringLiteral("file:///tmp/a")};
        QTest::newRow("no file") << 0U << QStringList();
        QTest::newRow("no local file") << 0U << QStringList{QStringLiteral("https://example.org/a.halfcup")};
    }
    void whatIsNoAnswerIsACancel() {
        QFETCH(uint, response);
        QFETCH(QStringList, uris);
        Portal portal(m_daemon->address);
        PortalFileHandover files(m_bus);
        QTRY_VERIFY(files.canChoose());
        QSignalSpy chosen(&files, &FileHandover::chosen);
        QSignalSpy cancelled(&files, &FileHandover::cancelled);
        files.chooseFile(QStringLiteral("t"), {});
        QTRY_COMPARE(portal.questions, 1);
        QVERIFY(!optionsOf(portal.calls.last()).contains(QStringLiteral("filters")));
        portal.respond(response, uris);
        QTRY_COMPARE(cancelled.count(), 1);
        QCOMPARE(chosen.count(), 0);
    }

    void anOldPortalNamesTheRequestItself() {
        Portal portal(m_daemon->address);
        portal.namesItsRequests = true;
        PortalFileHandover files(m_bus);
        QTRY_VERIFY(files.canChoose());
        QSignalSpy chosen(&files, &FileHandover::chosen);
        files.chooseFile(QStringLiteral("t"), {});
        QTRY_COMPARE(portal.questions, 1);
        QTest::qWait(50); // a person takes longer than a message
        portal.respond(0, {QStringLiteral("file:///tmp/a.halfcup")});
        QTRY_COMPARE(chosen.count(), 1);
    }

    void askedAgainTheFirstQuestionIsForgotten() {
        Portal portal(m_daemon->address);
        PortalFileHandover files(m_bus);
        QTRY_VERIFY(files.canChoose());
        QSignalSpy chosen(&files, &FileHandover::chosen);
        files.chooseFile(QStringLiteral("one"), {});
        QTRY_COMPARE(portal.questions, 1);
        const QString first = portal.request;
        files.chooseFile(QStringLiteral("two"), {});
        QTRY_COMPARE(portal.questions, 2);
        const QString second = std::exchange(portal.request, first);
        QVERIFY(first != second);
        portal.respond(0, {QStringLiteral("file:///tmp/first")});
        portal.request = second;
        portal.respond(0, {QStringLiteral("file:///tmp/second")});
        QTRY_COMPARE(chosen.count(), 1);
        QCOMPARE(chosen.first().first().toString(), QStringLiteral("/tmp/second"));
    }

    void aPortalThatRefusesOrGoesCancels() {
        auto portal = std::make_unique<Portal>(m_daemon->address);
        PortalFileHandover files(m_bus);
        QTRY_VERIFY(files.canChoose());
        QSignalSpy cancelled(&files, &FileHandover::cancelled);
        portal->refuses = true;
        files.chooseFile(QStringLiteral("t"), {});
        QTRY_COMPARE(cancelled.count(), 1);
        portal->refuses = false;
        files.chooseFile(QStringLiteral("t"), {});
        QTRY_COMPARE(portal->questions, 1);
        portal.reset(); // its name goes, and the question with it
        QTRY_COMPARE(cancelled.count(), 2);
        QVERIFY(!files.canChoose());
        QVERIFY(!files.canShare());
        const Portal another(m_daemon->address);
        QTRY_VERIFY(files.canChoose());
        QTRY_VERIFY(files.canShare());
    }

    void aFileIsShownInItsFolder() {
        const QTemporaryDir folder;
        const QString path = folder.filePath(QStringLiteral("all of it.halfcup"));
        QFile file(path);
        QVERIFY(file.open(QIODevice::WriteOnly) && file.write("x") == 1);
        file.close();
        Portal portal(m_daemon->address);
        PortalFileHandover files(m_bus);
        QVERIFY(!files.canShare());
        QTRY_VERIFY(files.canShare());
        QVERIFY(!files.hasShareSheet());
        files.share(path, QStringLiteral("application/octet-stream"));
        QTRY_COMPARE(portal.shown, QStringList{path});
        files.share(folder.filePath(QStringLiteral("gone")), QString()); // nothing to show, nothing to say
        QTest::qWait(50);
        QCOMPARE(portal.shown.size(), 1);
    }

    // OpenDirectory came with version 3 of the interface.
    void anOldOrMissingInterfaceIsNotOffered() {
        Portal portal(m_daemon->address);
        portal.opener = 2;
        portal.chooser.reset();
        PortalFileHandover files(m_bus);
        QSignalSpy cancelled(&files, &FileHandover::cancelled);
        QTRY_COMPARE(portal.calls.size(), 2);
        QTest::qWait(50);
        QVERIFY(!files.canShare());
        QVERIFY(!files.canChoose());
        files.chooseFile(QStringLiteral("t"), {});
        QCOMPARE(cancelled.count(), 1);
        files.share(QStringLiteral("/etc/hostname"), QString());
        QTest::qWait(50);
        QCOMPARE(portal.calls.size(), 2);
    }

    void aDeafPortalBlocksNothing() {
        Portal portal(m_daemon->address);
        portal.isDeaf = true;
        QElapsedTimer timer;
        timer.start();
        PortalFileHandover files(m_bus);
        QTRY_COMPARE(portal.calls.size(), 2);
        QVERIFY(!files.canChoose());
        QVERIFY2(timer.elapsed() < 500, qPrintable(QString::number(timer.elapsed())));
    }

    void noBusIsSilent_data() {
        QTest::addColumn<QString>("address");
        QTest::newRow("none") << QString();
        QTest::newRow("nothing there") << QStringLiteral("unix:path=/nonexistent/bus");
    }
    void noBusIsSilent() {
        QFETCH(QString, address);
        PortalFileHandover files(SessionBus::openAt(address));
        QSignalSpy cancelled(&files, &FileHandover::cancelled);
        QVERIFY(!files.canShare());
        QVERIFY(!files.canChoose());
        files.share(QStringLiteral("/etc/hostname"), QString());
        files.chooseFile(QStringLiteral("t"), {QStringLiteral(".halfcup")});
        QCOMPARE(cancelled.count(), 1);
    }

    void noPortalOnTheBusIsSilent() {
        const PortalFileHandover files(m_bus);
        QTest::qWait(50);
        QVERIFY(!files.canShare());
        QVERIFY(!files.canChoose());
    }

    void aBusThatDiesUnderAQuestionCancels() {
        Portal portal(m_daemon->address);
        PortalFileHandover files(m_bus);
        QTRY_VERIFY(files.canChoose());
        QSignalSpy cancelled(&files, &FileHandover::cancelled);
        files.chooseFile(QStringLiteral("t"), {});
        QTRY_COMPARE(portal.questions, 1);
        QTest::qWait(50);
        m_daemon->stop();
        QTRY_COMPARE(cancelled.count(), 1);
        QVERIFY(!files.canChoose());
    }

    void theFakeAnswersWhenItsTestDoes() {
        FakeFileHandover files;
        QSignalSpy chosen(&files, &FileHandover::chosen);
        QSignalSpy cancelled(&files, &FileHandover::cancelled);
        files.share(QStringLiteral("/a"), QStringLiteral("text/plain"));
        QVERIFY(files.shared().isEmpty());
        files.chooseFile(QStringLiteral("t"), {});
        QCOMPARE(cancelled.count(), 1);
        files.setCanShare(true);
        files.setCanChoose(true);
        QVERIFY(files.hasShareSheet());
        files.share(QStringLiteral("/a"), QStringLiteral("text/plain"));
        QCOMPARE(files.shared(), QStringList{QStringLiteral("/a")});
        files.choose(QStringLiteral("/b")); // nothing was asked
        QCOMPARE(chosen.count(), 0);
        files.chooseFile(QStringLiteral("t"), {QStringLiteral(".halfcup")});
        files.choose(QStringLiteral("/b"));
        files.choose(QStringLiteral("/c"));
        QCOMPARE(chosen.count(), 1);
        QCOMPARE(files.endings(), QStringList{QStringLiteral(".halfcup")});
    }

private:
    std::unique_ptr<PrivateBus> m_daemon;
    std::shared_ptr<SessionBus> m_bus;
};

QTEST_GUILESS_MAIN(DevicePortal)
#include "device_portal.moc"
