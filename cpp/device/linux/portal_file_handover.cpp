// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

#include "device/linux/portal_file_handover.h"

#include <QDBusArgument>
#include <QDBusMetaType>
#include <QDBusObjectPath>
#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>
#include <QDBusUnixFileDescriptor>
#include <QDBusVariant>
#include <QFile>
#include <QUrl>

#include <utility>

namespace halfcup::device {

/// One line of the chooser's list of file types: its name, and patterns that belong to it (kind 0: a glob).
struct PortalPattern {
    uint kind = 0;
    QString pattern;
};
struct PortalFilter {
    QString name;
    QList<PortalPattern> patterns;
};

QDBusArgument& operator<<(QDBusArgument& argument, const PortalPattern& pattern) {
    argument.beginStructure();
    argument << pattern.kind << pattern.pattern;
    argument.endStructure();
    return argument;
}

const QDBusArgument& operator>>(const QDBusArgument& argument, PortalPattern& pattern) {
    argument.beginStructure();
    argument >> pattern.kind >> pattern.pattern;
    argument.endStructure();
    return argument;
}

QDBusArgument& operator<<(QDBusArgument& argument, const PortalFilter& filter) {
    argument.beginStructure();
    argument << filter.name << filter.patterns;
    argument.endStructure();
    return argument;
}

const QDBusArgument& operator>>(const QDBusArgument& argument, PortalFilter& filter) {
    argument.beginStructure();
    argument >> filter.name >> filter.patterns;
    argument.endStructure();
    return argument;
}

namespace {

const QString kService = QStringLiteral("org.freedesktop.portal.Desktop");
const QString kPath = QStringLiteral("/org/freedesktop/portal/desktop");
const QString kChooser = QStringLiteral("org.freedesktop.portal.FileChooser");
const QString kOpener = QStringLiteral("org.freedesktop.portal.OpenURI");
const QString kRequest = QStringLiteral("org.freedesktop.portal.Request");
constexpr uint kOpensDirectories = 3; // version of OpenURI from which on OpenDirectory is there

QDBusMessage toPortal(const QString& interface, const char* method) {
    return QDBusMessage::createMethodCall(kService, kPath, interface, QString::fromLatin1(method));
}

QList<PortalFilter> filtersFor(const QStringList& endings) {
    PortalFilter filter;
    for (const QString& ending : endings)
        filter.patterns.append({0, QLatin1Char('*') + ending});
    filter.name = endings.join(QLatin1Char(' '));
    return endings.isEmpty() ? QList<PortalFilter>() : QList<PortalFilter>{filter};
}

} // namespace

PortalFileHandover::PortalFileHandover(std::shared_ptr<SessionBus> bus, QObject* parent)
    : FileHandover(parent)
    , m_bus(std::move(bus))
    , m_service(m_bus, kService) {
    qDBusRegisterMetaType<PortalPattern>();
    qDBusRegisterMetaType<QList<PortalPattern>>();
    qDBusRegisterMetaType<PortalFilter>();
    qDBusRegisterMetaType<QList<PortalFilter>>();
    connect(&m_service, &BusService::isThereChanged, this, [this] {
        if (m_service.isThere())
            askVersions();
        else
            giveUp();
        Q_EMIT worksChanged();
    });
    connect(&m_service, &BusService::newOwner, this, [this] {
        giveUp(); // the one before took the question with it
        askVersions();
    });
}

bool PortalFileHandover::isThere() const {
    return m_bus->isConnected() && m_service.isThere();
}

bool PortalFileHandover::canShare() const {
    return isThere() && m_openerVersion >= kOpensDirectories;
}

bool PortalFileHandover::canChoose() const {
    return isThere() && m_chooserVersion > 0;
}

// A portal shows only the interfaces that something on this desktop stands behind.
void PortalFileHandover::askVersions() {
    askVersion(kChooser, m_chooserVersion);
    askVersion(kOpener, m_openerVersion);
}

void PortalFileHandover::askVersion(const QString& interface, uint& version) {
    QDBusMessage call = toPortal(QStringLiteral("org.freedesktop.DBus.Properties"), "Get");
    call << interface << QStringLiteral("version");
    auto* watcher = new QDBusPendingCallWatcher(m_bus->connection().asyncCall(call), this);
    connect(watcher, &QDBusPendingCallWatcher::finished, this,
            [this, &version](QDBusPendingCallWatcher* done) {
                done->deleteLater();
                const QDBusPendingReply<QDBusVariant> reply = *done;
                const uint found = reply.isValid() ? reply.value().variant().toUInt() : 0;
                if (std::exchange(version, found) != found)
                    Q_EMIT worksChanged();
            });
}

void PortalFileHandover::share(const QString& path, const QString&) {
    QFile file(path);
    if (!canShare() || !file.open(QIODevice::ReadOnly))
        return;
    QDBusMessage call = toPortal(kOpener, "OpenDirectory");
    call << QString() << QVariant::fromValue(QDBusUnixFileDescriptor(file.handle())) << QVariantMap();
    m_bus->connection().send(call); // it shows, or it does not: the file lies there all the same
}

void PortalFileHandover::chooseFile(const QString& title, const QStringList& endings) {
    if (!canChoose()) {
        Q_EMIT cancelled();
        return;
    }
    const QString token = QStringLiteral("halfcup%1").arg(++m_token);
    const QString sender = m_bus->connection().baseService().mid(1).replace(u'.', u'_');
    listenAt(QStringLiteral("%1/request/%2/%3").arg(kPath, sender, token));
    QVariantMap options{{QStringLiteral("handle_token"), token}};
    if (!endings.isEmpty())
        options.insert(QStringLiteral("filters"), QVariant::fromValue(filtersFor(endings)));
    QDBusMessage call = toPortal(kChooser, "OpenFile");
    call << QString() << title << options;
    auto* watcher = new QDBusPendingCallWatcher(m_bus->connection().asyncCall(call), this);
    connect(watcher, &QDBusPendingCallWatcher::finished, this,
            [this, asked = m_request](QDBusPendingCallWatcher* done) {
                done->deleteLater();
                if (m_request != asked) // answered already, or asked anew
                    return;
                const QDBusPendingReply<QDBusObjectPath> reply = *done;
                if (!reply.isValid())
                    giveUp();
                else if (reply.value().path() != asked)
                    listenAt(reply.value().path()); // a portal before 0.9 names its requests itself
            });
}

void PortalFileHandover::listenAt(const QString& requestPath) {
    QDBusConnection& bus = m_bus->connection();
    const auto slot = SLOT(answered(uint, QVariantMap));
    if (!m_request.isEmpty())
        bus.disconnect(kService, m_request, kRequest, QStringLiteral("Response"), this, slot);
    m_request = requestPath;
    if (!m_request.isEmpty())
        bus.connect(kService, m_request, kRequest, QStringLiteral("Response"), this, slot);
}

void PortalFileHandover::giveUp() {
    if (m_request.isEmpty())
        return;
    if (m_bus->isConnected())
        listenAt(QString());
    m_request.clear();
    Q_EMIT cancelled();
}

void PortalFileHandover::answered(uint response, const QVariantMap& results) {
    if (m_request.isEmpty())
        return;
    listenAt(QString());
    const QStringList uris = results.value(QStringLiteral("uris")).toStringList();
    const QString path = uris.isEmpty() ? QString() : QUrl(uris.first()).toLocalFile();
    if (response == 0 && !path.isEmpty()) // 0: done, 1: cancelled, 2: ended in another way
        Q_EMIT chosen(path);
    else
        Q_EMIT cancelled();
}

} // namespace halfcup::device
