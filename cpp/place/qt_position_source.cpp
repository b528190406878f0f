// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "place/qt_position_source.h"

#include "place/byte_feed.h"
#include "place/moment_source.h"
#include "place/nmea_lines.h"
#include "place/source_setting.h"

#include <QDateTime>
#include <QGeoPositionInfoSource>
#include <QNmeaPositionInfoSource>
#include <QTimer>

#include <algorithm>
#include <cmath>
#include <utility>

namespace halfcup::place {

namespace {

constexpr int kFirstRetryMs = 500;
constexpr int kLastRetryMs = 5000;
constexpr int kPatienceMs = 15'000;

std::int64_t nowUtcMs() {
    return QDateTime::currentMSecsSinceEpoch();
}

} // namespace

class QtPositionSource::Private {
public:
    Private(QtPositionSource* source, const QString& text)
        : q(source)
        , setting(readSourceSetting(text))
        , name(text.trimmed().isEmpty() ? QStringLiteral("default") : text.trimmed()) {
        retry.setSingleShot(true);
        patience.setSingleShot(true);
        patience.setInterval(kPatienceMs);
        QObject::connect(&retry, &QTimer::timeout, q, [this] { connectNow(); });
        QObject::connect(&patience, &QTimer::timeout, q, [this] {
            tell(Problem::NoFixYet,
                 tr("The receiver has not found its place yet. It needs a clear view of the sky."));
        });
    }

    void connectNow() {
        dropLine();
        switch (setting.kind) {
        case SourceSetting::Kind::Bad:
            return tell(Problem::BadSetting, setting.problem);
        case SourceSetting::Kind::None:
            return tell(Problem::NoSource, tr("Positions are switched off in the setup."));
        case SourceSetting::Kind::PlatformDefault:
            return connectPlatform();
        default:
            return connectLine();
        }
    }

    void connectLine() {
        device = std::make_unique<SentenceDevice>();
        auto moments = std::make_unique<MomentSource>();
        moments->setDevice(device.get());
        QObject::connect(moments.get(), &QGeoPositionInfoSource::positionUpdated, q,
                         [this, source = moments.get()](const QGeoPositionInfo& info) {
                             deliver(info, source->receiverUtcMs(info), ReceiverClock::Foreign, 1.0);
                         });
        moments->startUpdates();
        geo = std::move(moments);
        lines.reset();
        feed = makeByteFeed(setting, fast);
        QObject::connect(feed.get(), &ByteFeed::opened, q, [this] { patience.start(); });
        QObject::connect(feed.get(), &ByteFeed::bytes, q, [this](const QByteArray& bytes) { take(bytes); });
        QObject::connect(feed.get(), &ByteFeed::lost, q,
                         [this](Problem kind, const QString& sentence) { lose(kind, sentence); });
        QObject::connect(feed.get(), &ByteFeed::ended, q, [this] { endSoon(); });
        feed->open();
    }

    void take(const QByteArray& bytes) {
        const auto before = lines.sentences();
        // One of the sentences may bring a fix, and whoever gets the fix may stop this source.
        const auto alive = round;
        lines.feed({bytes.constData(), static_cast<std::size_t>(bytes.size())},
                   [&](std::string_view sentence) {
                       if (alive == round && device)
                           device->put(sentence);
                   });
        if (lines.sentences() > before)
            retryMs = kFirstRetryMs;
    }

    void connectPlatform() {
        const QVariantMap parameters{{QStringLiteral("desktopId"), QStringLiteral("halfcup")}};
        geo.reset(QGeoPositionInfoSource::createDefaultSource(parameters, nullptr));
        if (!geo) {
            tell(Problem::NoSource, tr("This device has nothing that tells positions."));
            return tryAgain();
        }
        // The platform may offer a receiver on a line as its default; that one speaks of HDOP, not of metres.
        auto* nmea = qobject_cast<QNmeaPositionInfoSource*>(geo.get());
        if (nmea)
            nmea->setUserEquivalentRangeError(kRangeErrorM);
        QObject::connect(geo.get(), &QGeoPositionInfoSource::positionUpdated, q,
                         [this, nmea](const QGeoPositionInfo& info) {
                             std::optional<std::int64_t> saidUtcMs;
                             if (info.timestamp().isValid())
                                 saidUtcMs = info.timestamp().toMSecsSinceEpoch();
                             deliver(info, saidUtcMs, nmea ? ReceiverClock::Foreign : ReceiverClock::OurOwn,
                                     nmea ? 1.0 : widenTo95(1.0));
                         });
        QObject::connect(geo.get(), &QGeoPositionInfoSource::errorOccurred, q,
                         [this](QGeoPositionInfoSource::Error error) { losePlatform(error); });
        geo->setPreferredPositioningMethods(QGeoPositionInfoSource::AllPositioningMethods);
        geo->setUpdateInterval(1000);
        patience.start();
        geo->startUpdates();
    }

    void losePlatform(QGeoPositionInfoSource::Error error) {
        switch (error) {
        case QGeoPositionInfoSource::NoError:
            return;
        case QGeoPositionInfoSource::UpdateTimeoutError:
            return tell(Problem::NoFixYet,
                        tr("This device has not found its place yet. It needs a clear view of the sky."));
        case QGeoPositionInfoSource::AccessError:
            return lose(Problem::Denied, positionDeniedSentence());
        case QGeoPositionInfoSource::ClosedError:
            return lose(Problem::Closed, tr("The position service has ended. It is tried again."));
        default:
            return lose(Problem::NoSource, tr("This device has nothing that tells positions."));
        }
    }

    void deliver(const QGeoPositionInfo& info, std::optional<std::int64_t> receiverUtcMs, ReceiverClock clock,
                 double widen) {
        if (!running)
            return;
        Fix fix;
        fix.latitudeDeg = info.coordinate().latitude();
        fix.longitudeDeg = info.coordinate().longitude();
        const double accuracyM =
            info.hasAttribute(QGeoPositionInfo::HorizontalAccuracy)
                ? widen * static_cast<double>(info.attribute(QGeoPositionInfo::HorizontalAccuracy))
                : std::nan("");
        // Zero is what comes of an HDOP field of 0.0, printed where it is not known.
        if (std::isfinite(accuracyM) && accuracyM > 0.0)
            fix.accuracyM = accuracyM;
        fix.takenAtUtcMs = resolveTakenAtUtcMs(nowUtcMs(), receiverUtcMs, clock);
        fix.receiverUtcMs = receiverUtcMs;
        fix.source = name.toStdString();
        patience.start();
        lastProblem.reset();
        retryMs = kFirstRetryMs;
        emit q->fixReceived(fix);
    }

    void lose(Problem kind, const QString& sentence) {
        if (!running)
            return;
        patience.stop();
        tryAgain();
        tell(kind, sentence);
    }

    void tryAgain() {
        retry.start(retryMs);
        retryMs = std::min(2 * retryMs, kLastRetryMs);
    }

    // Qt holds the last moment back for some 20 ms, waiting for more of its sentences.
    void endSoon() {
        QTimer::singleShot(100, q, [this, alive = round] {
            if (alive != round || !running)
                return;
            patience.stop();
            tell(Problem::Ended, tr("The recording %1 is over.").arg(setting.path));
        });
    }

    void tell(Problem kind, const QString& sentence) {
        if (!running || lastProblem == std::pair(kind, sentence))
            return;
        lastProblem = std::pair(kind, sentence);
        emit q->problem(kind, sentence);
    }

    // Everything may be in the middle of its own signal, so it is taken apart from the event loop; as
    // children of this source, what is left dies with it at the latest, the reader before its device.
    void dropLine() {
        ++round;
        if (geo) {
            geo->disconnect(q);
            geo->stopUpdates();
        }
        if (feed)
            feed->disconnect(q);
        retire(geo.release());
        retire(device.release());
        retire(feed.release());
    }

    void retire(QObject* object) {
        if (!object)
            return;
        object->setParent(q);
        object->deleteLater();
    }

    static QString tr(const char* text) { return QtPositionSource::tr(text); }

    QtPositionSource* q;
    SourceSetting setting;
    QString name;
    bool fast = false;
    bool running = false;
    int retryMs = kFirstRetryMs;
    quint64 round = 0; // of connections, so that what belongs to an earlier one is dropped
    QTimer retry;
    QTimer patience;
    NmeaLines lines;
    std::optional<std::pair<Problem, QString>> lastProblem;
    std::unique_ptr<SentenceDevice> device;
    std::unique_ptr<QGeoPositionInfoSource> geo;
    std::unique_ptr<ByteFeed> feed;
};

std::unique_ptr<PositionSource> makePositionSource(const QString& setting) {
    return std::make_unique<QtPositionSource>(setting);
}

QtPositionSource::QtPositionSource(const QString& setting, QObject* parent)
    : PositionSource(parent)
    , d(std::make_unique<Private>(this, setting)) {}

QString positionDeniedSentence() {
    return QtPositionSource::tr(
        "This device does not tell the program where it is: the position service is missing, "
        "or it is not allowed.");
}

QtPositionSource::~QtPositionSource() {
    d->running = false;
    d->geo.reset(); // reads from the device
    d->feed.reset();
}

void QtPositionSource::start() {
    if (d->running)
        return;
    d->running = true;
    d->retryMs = kFirstRetryMs;
    d->lastProblem.reset();
    d->retry.start(0);
    emit runningChanged(true);
}

void QtPositionSource::stop() {
    if (!d->running)
        return;
    d->running = false;
    d->retry.stop();
    d->patience.stop();
    d->dropLine();
    emit runningChanged(false);
}

bool QtPositionSource::isRunning() const {
    return d->running;
}

QString QtPositionSource::name() const {
    return d->name;
}

void QtPositionSource::setPace(Pace pace) {
    d->fast = pace == Pace::Fast;
}

void QtPositionSource::setPatienceMs(int patienceMs) {
    d->patience.setInterval(std::max(patienceMs, 1));
}

} // namespace halfcup::place
