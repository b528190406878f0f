// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "place/position_source.h"

#include <memory>

// The one adapter to Qt Positioning. Where that does not exist this file is left out of the build and the
// program gets a ScriptedPositionSource that never speaks.

namespace halfcup::place {

// One standard error of a range measurement. Qt Positioning makes 2 * HDOP * this of it as the horizontal
// accuracy, which is a 95 % radius; with 2.45 m a dilution of 1 gives the 4.9 m of kOpenSkyAccuracyM.
inline constexpr double kRangeErrorM = kOpenSkyAccuracyM / 2.0;

class QtPositionSource : public PositionSource {
    Q_OBJECT
public:
    // setting:
    //   "" or "default"              the platform's own (GeoClue on Linux)
    //   "none"                       never any position; start() tells NoSource once
    //   "nmea:file:PATH"             a recording, in its own time unless pace says otherwise
    //   "nmea:tcp://HOST:PORT"       a receiver or multiplexer on the network
    //   "nmea:serial:/dev/ttyUSB0"   a receiver on a serial line; "?baud=9600" behind it, default 4800 (NMEA
    //   0183) "gpsd://HOST:PORT"           a position daemon, asked for NMEA; port 2947 where none is given
    // Anything else: BadSetting, with a sentence that names the forms above.
    explicit QtPositionSource(const QString& setting, QObject* parent = nullptr);
    ~QtPositionSource() override;

    void start() override;
    void stop() override;
    [[nodiscard]] bool isRunning() const override;
    [[nodiscard]] QString name() const override;

    // How a file is played: in its own time (the default), or as fast as it can be read.
    enum class Pace { RealTime, Fast };
    void setPace(Pace pace);

    // How long to wait for a fix before NoFixYet is told. Default 15 s [convention].
    void setPatienceMs(int patienceMs);

private:
    class Private;
    std::unique_ptr<Private> d;
};

} // namespace halfcup::place
