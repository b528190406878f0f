// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "device/linux/portal_text_scale.h"

#include <QDBusMessage>
#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>

#include <cmath>
#include <utility>

namespace halfcup::device {

namespace {

const QString kService = QStringLiteral("org.freedesktop.portal.Desktop");
const QString kPath = QStringLiteral("/org/freedesktop/portal/desktop");
const QString kInterface = QStringLiteral("org.freedesktop.portal.Settings");
const QString kSpace = QStringLiteral("org.gnome.desktop.interface");
const QString kKey = QStringLiteral("text-scaling-factor");

} // namespace

PortalTextScale::PortalTextScale(std::shared_ptr<SessionBus> bus, QObject* parent)
    : TextScale(parent)
    , m_bus(std::move(bus))
    , m_service(m_bus, kService) {
    connect(&m_service, &BusService::isThereChanged, this, &PortalTextScale::ask);
    m_bus->connection().connect(kService, kPath, kInterface, QStringLiteral("SettingChanged"), this,
                                SLOT(settingChanged(QDBusMessage)));
    ask();
}

void PortalTextScale::ask() {
    if (!m_service.isThere())
        return;
    QDBusMessage call = QDBusMessage::createMethodCall(kService, kPath, kInterface, QStringLiteral("Read"));
    call << kSpace << kKey;
    auto* answer = new QDBusPendingCallWatcher(m_bus->connection().asyncCall(call), this);
    connect(answer, &QDBusPendingCallWatcher::finished, this, [this, answer] {
        answer->deleteLater();
        const QDBusPendingReply<QDBusVariant> reply = *answer;
        if (!reply.isError()) // else this desktop has no such setting
            take(reply.value().variant());
    });
}

void PortalTextScale::settingChanged(const QDBusMessage& told) {
    if (told.signature() == QLatin1String("ssv") && told.arguments().at(0).toString() == kSpace &&
        told.arguments().at(1).toString() == kKey)
        take(told.arguments().at(2));
}

void PortalTextScale::take(const QVariant& value) {
    QVariant bare = value; // Read wraps what it found once more
    while (bare.canConvert<QDBusVariant>() && bare.metaType() == QMetaType::fromType<QDBusVariant>())
        bare = bare.value<QDBusVariant>().variant();
    bool isNumber = false;
    const double scale = bare.toDouble(&isNumber);
    if (!isNumber || !std::isfinite(scale) || scale <= 0 || scale == m_scale)
        return;
    m_scale = scale;
    Q_EMIT changed();
}

} // namespace halfcup::device
