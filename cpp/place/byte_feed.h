// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "place/nmea_lines.h"
#include "place/position_source.h"
#include "place/source_setting.h"

#include <QByteArray>
#include <QObject>

#include <memory>

// Where the bytes of a receiver come from: a recording, a TCP connection, a serial line. A feed opens once
// and ends once; taking a lost line up again is the business of its owner. Inside place/ only.

namespace halfcup::place {

class ByteFeed : public QObject {
    Q_OBJECT
public:
    using Problem = PositionSource::Problem;

    explicit ByteFeed(QObject* parent)
        : QObject(parent) {}

    // Never blocks and never answers before it has returned... except with lost() for what can be seen at
    // once.
    virtual void open() = 0;

signals:
    void opened();
    void bytes(const QByteArray& bytes);
    void lost(halfcup::place::PositionSource::Problem kind, const QString& sentence); // closed, or never open
    void ended();                                                                     // a recording is over
};

// A feed for File, Tcp, Gpsd and Serial; null for the other kinds. fast: a file is read without its pauses.
[[nodiscard]] std::unique_ptr<ByteFeed> makeByteFeed(const SourceSetting& setting, bool fast);

} // namespace halfcup::place
