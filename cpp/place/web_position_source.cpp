// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "place/web_position_source.h"

#include "place/source_setting.h"

#include <QDateTime>

#include <cmath>

// Written in JavaScript: platform/web/browser.js.
extern "C" {
int halfcupWatchPosition(void (*found)(void* self, double latitude, double longitude, double accuracy,
                                       double utcMs),
                         void (*lost)(void* self, int code), void* self);
void halfcupForgetPosition(int watch);
}

namespace halfcup::place {

std::unique_ptr<PositionSource> makePositionSource(const QString& setting) {
    return std::make_unique<WebPositionSource>(setting);
}

QString positionDeniedSentence() {
    return WebPositionSource::tr(
        "The browser does not tell this page where it is: allow it in the settings of the page.");
}

WebPositionSource::WebPositionSource(const QString& setting, QObject* parent)
    : PositionSource(parent)
    , m_setting(setting)
    , m_name(setting.trimmed().isEmpty() ? QStringLiteral("default") : setting.trimmed()) {
    m_soon.setSingleShot(true);
    connect(&m_soon, &QTimer::timeout, this, &WebPositionSource::begin);
}

WebPositionSource::~WebPositionSource() {
    halfcupForgetPosition(m_watch);
}

void WebPositionSource::start() {
    if (m_running)
        return;
    m_running = true;
    m_lastProblem.reset();
    m_soon.start(0);
    emit runningChanged(true);
}

void WebPositionSource::stop() {
    if (!m_running)
        return;
    m_running = false;
    m_soon.stop();
    halfcupForgetPosition(m_watch);
    m_watch = 0;
    emit runningChanged(false);
}

void WebPositionSource::begin() {
    const SourceSetting setting = readSourceSetting(m_setting);
    switch (setting.kind) {
    case SourceSetting::Kind::Bad:
        return tell(Problem::BadSetting, setting.problem);
    case SourceSetting::Kind::None:
        return tell(Problem::NoSource, tr("Positions are switched off in the setup."));
    case SourceSetting::Kind::PlatformDefault:
        break;
    default:
        return tell(Problem::NoSource, tr("A browser cannot reach the receiver that is named in the setup."));
    }
    m_watch = halfcupWatchPosition(
        [](void* self, double latitude, double longitude, double accuracy, double utcMs) {
            static_cast<WebPositionSource*>(self)->take(latitude, longitude, accuracy, utcMs);
        },
        [](void* self, int code) { static_cast<WebPositionSource*>(self)->lose(code); }, this);
    if (m_watch == 0)
        lose(0);
}

void WebPositionSource::take(double latitudeDeg, double longitudeDeg, double accuracyM, double utcMs) {
    if (!m_running)
        return;
    Fix fix;
    fix.latitudeDeg = latitudeDeg;
    fix.longitudeDeg = longitudeDeg;
    if (std::isfinite(accuracyM) && accuracyM > 0.0)
        fix.accuracyM = accuracyM;
    if (std::isfinite(utcMs) && utcMs > 0.0)
        fix.receiverUtcMs = static_cast<std::int64_t>(utcMs);
    fix.takenAtUtcMs =
        resolveTakenAtUtcMs(QDateTime::currentMSecsSinceEpoch(), fix.receiverUtcMs, ReceiverClock::OurOwn);
    fix.source = m_name.toStdString();
    m_lastProblem.reset();
    emit fixReceived(fix);
}

void WebPositionSource::lose(int code) {
    switch (code) {
    case 1:
        return tell(Problem::Denied, positionDeniedSentence());
    case 2:
    case 3:
        return tell(Problem::NoFixYet,
                    tr("This device has not found its place yet. It needs a clear view of the sky."));
    default:
        return tell(Problem::NoSource, tr("This device has nothing that tells positions."));
    }
}

void WebPositionSource::tell(Problem kind, const QString& sentence) {
    if (!m_running || m_lastProblem == kind)
        return;
    m_lastProblem = kind;
    emit problem(kind, sentence);
}

} // namespace halfcup::place
