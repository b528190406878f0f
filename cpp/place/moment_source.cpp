// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "place/moment_source.h"

#include "place/nmea_lines.h"
#include "place/qt_position_source.h"

#include <QTimeZone>

#include <algorithm>
#include <cmath>

namespace halfcup::place {

namespace {

constexpr qsizetype kHoldAtMost = 64 * 1024;

} // namespace

SentenceDevice::SentenceDevice() {
    open(QIODevice::ReadOnly | QIODevice::Unbuffered);
}

void SentenceDevice::put(std::string_view sentence) {
    if (m_bytes.size() > kHoldAtMost)
        m_bytes.clear();
    m_bytes.append(sentence.data(), static_cast<qsizetype>(sentence.size())).append("\r\n");
    emit readyRead();
}

qint64 SentenceDevice::bytesAvailable() const {
    return m_bytes.size() + QIODevice::bytesAvailable();
}

bool SentenceDevice::canReadLine() const {
    return m_bytes.contains('\n') || QIODevice::canReadLine();
}

qint64 SentenceDevice::readData(char* data, qint64 maxSize) {
    const qint64 size = std::min<qint64>(maxSize, m_bytes.size());
    std::copy_n(m_bytes.constData(), size, data);
    m_bytes.remove(0, size);
    return size;
}

MomentSource::MomentSource()
    : QNmeaPositionInfoSource(RealTimeMode)
    , m_firstMoment(QDate(2000, 1, 1), QTime(0, 0), QTimeZone::utc()) {
    setUserEquivalentRangeError(kRangeErrorM);
}

std::optional<std::int64_t> MomentSource::receiverUtcMs(const QGeoPositionInfo& info) const {
    const qint64 moment = m_firstMoment.secsTo(info.timestamp());
    const qint64 behind = m_moment - moment;
    if (behind < 0 || behind >= static_cast<qint64>(m_times.size()))
        return std::nullopt;
    return m_times[m_times.size() - 1 - static_cast<std::size_t>(behind)];
}

bool MomentSource::parsePosInfoFromNmeaData(const char* data, int size, QGeoPositionInfo* info,
                                            bool* hasFix) {
    if (!QNmeaPositionInfoSource::parsePosInfoFromNmeaData(data, size, info, hasFix))
        return false;
    const std::string_view sentence(data, static_cast<std::size_t>(std::max(size, 0)));
    const bool carries = nmeaCarriesPosition(sentence);
    *hasFix = carries && info->coordinate().isValid() && !nmeaSaysNoFix(sentence);
    if (!*hasFix)
        info->setCoordinate({});
    const QDateTime said = info->timestamp();
    const auto timeOfDay = nmeaTimeOfDayMs(sentence);
    if (timeOfDay || carries) {
        if (!timeOfDay || timeOfDay != m_timeOfDay || m_times.empty())
            nextMoment();
        m_timeOfDay = timeOfDay;
        if (said.date().isValid())
            m_lastDated = said;
        if (timeOfDay)
            m_times.back() = datedUtcMs(*timeOfDay);
        info->setTimestamp(m_firstMoment.addSecs(m_moment));
    }
    return true;
}

void MomentSource::nextMoment() {
    ++m_moment;
    m_times.emplace_back(std::nullopt);
    if (m_times.size() > 16)
        m_times.pop_front();
}

// GGA and GLL know the time of day only: it belongs to the day that brings it nearest to the last full time,
// or to now where there was none.
std::int64_t MomentSource::datedUtcMs(int timeOfDayMs) const {
    constexpr std::int64_t dayMs = 24 * 3600 * 1000;
    const std::int64_t near = m_lastDated.isValid() ? m_lastDated.toMSecsSinceEpoch()
                                                    : std::int64_t{QDateTime::currentMSecsSinceEpoch()};
    const double days = static_cast<double>(near - timeOfDayMs) / static_cast<double>(dayMs);
    return static_cast<std::int64_t>(std::llround(days)) * dayMs + timeOfDayMs;
}

} // namespace halfcup::place
