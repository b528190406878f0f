// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QByteArray>
#include <QDateTime>
#include <QIODevice>
#include <QNmeaPositionInfoSource>

#include <cstdint>
#include <deque>
#include <optional>
#include <string_view>

// What stands between NmeaLines and a fix: good sentences go into a SentenceDevice, and a MomentSource that
// reads from it has Qt make positions of them. Inside place/ only; apart from the source, so that it can be
// tried with any sentence without waiting for a line.

namespace halfcup::place {

// Good sentences on their way to Qt. Sequential, line by line, and of bounded size should nobody read.
class SentenceDevice : public QIODevice {
    Q_OBJECT
public:
    SentenceDevice();

    void put(std::string_view sentence);
    [[nodiscard]] bool isSequential() const override { return true; }
    [[nodiscard]] qint64 bytesAvailable() const override;
    [[nodiscard]] bool canReadLine() const override;

protected:
    qint64 readData(char* data, qint64 maxSize) override;
    qint64 writeData(const char*, qint64) override { return -1; }

private:
    QByteArray m_bytes;
};

// Qt's NMEA reader, told the truth about two things it gets wrong for our purpose (Qt 6.4):
// - It takes a position as valid as soon as any sentence of the same moment is, and GSA counts as valid even
//   with mode 1, "no fix". Here only a sentence that carries a position and stands by it counts.
// - It joins the sentences of one moment by their time and drops whatever looks older than the last moment,
//   and gives no position at all without a date. But receivers without RMC or ZDA send no date, at midnight
//   their time falls back, and a receiver that finds its satellites may correct its clock backwards. So
//   moments are counted here, and the count, dressed as a time, is what Qt orders them by; the receiver's own
//   time is kept beside it.
class MomentSource : public QNmeaPositionInfoSource {
    Q_OBJECT
public:
    MomentSource();

    // The receiver's own time for a position that Qt hands out.
    [[nodiscard]] std::optional<std::int64_t> receiverUtcMs(const QGeoPositionInfo& info) const;

protected:
    bool parsePosInfoFromNmeaData(const char* data, int size, QGeoPositionInfo* info, bool* hasFix) override;

private:
    void nextMoment();
    [[nodiscard]] std::int64_t datedUtcMs(int timeOfDayMs) const;

    QDateTime m_firstMoment;
    qint64 m_moment = 0;
    std::deque<std::optional<std::int64_t>> m_times; // of the last moments, the newest at the back
    std::optional<int> m_timeOfDay;
    QDateTime m_lastDated;
};

} // namespace halfcup::place
