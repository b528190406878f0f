// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

#include "device/linux/feedback_vibration.h"

#include <QDBusArgument>
#include <QDBusMessage>
#include <QDBusMetaType>
#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>
#include <QGuiApplication>
#include <QList>
#include <QVariantMap>

#include <algorithm>
#include <utility>

namespace halfcup::device {

/// One stretch of a buzz as feedbackd takes it, D-Bus type (du): strength 0 to 1, length in ms.
struct BuzzPart {
    double strength = 1.0;
    uint lengthMs = 0;
};

// Found by QtDBus by argument-dependent lookup.
QDBusArgument& operator<<(QDBusArgument& out, const BuzzPart& part) {
    out.beginStructure();
    out << part.strength << part.lengthMs;
    out.endStructure();
    return out;
}

const QDBusArgument& operator>>(const QDBusArgument& in, BuzzPart& part) {
    in.beginStructure();
    in >> part.strength >> part.lengthMs;
    in.endStructure();
    return in;
}

namespace {

const QString kService = QStringLiteral("org.sigxcpu.Feedback");
const QString kPath = QStringLiteral("/org/sigxcpu/Feedback");

// The daemon of Debian 12 (feedbackd 0.0.3, default theme) gives button-pressed 15 ms and timeout-completed
// 100 ms; both are names the Event Naming Specification 0.0.0 leaves to applications. Each length takes the
// nearer one.
constexpr std::chrono::milliseconds kLong{60};

QString appId() {
    const QString id = QGuiApplication::desktopFileName();
    return id.isEmpty() ? QStringLiteral("halfcup") : id;
}

} // namespace

FeedbackVibration::FeedbackVibration(std::shared_ptr<SessionBus> bus, QObject* parent)
    : Vibration(parent)
    , m_bus(std::move(bus))
    , m_service(m_bus, kService) {
    qDBusRegisterMetaType<BuzzPart>();
    qDBusRegisterMetaType<QList<BuzzPart>>();
    connect(&m_service, &BusService::isThereChanged, this, &Vibration::worksChanged);
    // A new daemon may know what the old one did not.
    connect(&m_service, &BusService::newOwner, this, [this] { m_eventsOnly = false; });
}

bool FeedbackVibration::works() const {
    return m_bus->isConnected() && m_service.isThere();
}

void FeedbackVibration::buzz(std::chrono::milliseconds length) {
    if (!m_on || length.count() < 1 || !works()) {
        return;
    }
    length = std::min(length, kLongest);
    if (m_eventsOnly) {
        trigger(length);
        return;
    }
    QDBusMessage call = QDBusMessage::createMethodCall(kService, kPath, kService + QStringLiteral(".Haptic"),
                                                       QStringLiteral("Vibrate"));
    const QList<BuzzPart> pattern{{1.0, static_cast<uint>(length.count())}};
    call << appId() << QVariant::fromValue(pattern);
    auto* watcher = new QDBusPendingCallWatcher(m_bus->connection().asyncCall(call), this);
    connect(watcher, &QDBusPendingCallWatcher::finished, this, [this, length](QDBusPendingCallWatcher* done) {
        done->deleteLater();
        const QDBusError::ErrorType error = done->error().type();
        if (error == QDBusError::UnknownInterface || error == QDBusError::UnknownMethod ||
            error == QDBusError::UnknownObject) {
            m_eventsOnly = true;
            trigger(length);
        }
    });
}

void FeedbackVibration::trigger(std::chrono::milliseconds length) {
    QDBusMessage call =
        QDBusMessage::createMethodCall(kService, kPath, kService, QStringLiteral("TriggerFeedback"));
    const QString event =
        length >= kLong ? QStringLiteral("timeout-completed") : QStringLiteral("button-pressed");
    // "quiet": the motor only. The theme would play a sound of its own besides, over ours.
    const QVariantMap hints{{QStringLiteral("profile"), QStringLiteral("quiet")}};
    // Timeout -1: once, for as long as the daemon's theme says.
    call << appId() << event << hints << -1;
    m_bus->connection().send(call);
}

} // namespace halfcup::device
