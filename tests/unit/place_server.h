// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// What the tests of place/ share: a receiver on a TCP port, and a small maker of NMEA 0183 sentences.
#include "place/geometry.h"
#include "place/nmea_lines.h"
#include "place/position_source.h"
#include "place/stamp.h"

#include <QByteArray>
#include <QDateTime>
#include <QList>
#include <QTcpServer>
#include <QTcpSocket>
#include <QTimer>

#include <cmath>
#include <functional>

namespace placetest {

// Serves lines to every connection on 127.0.0.1, each from the beginning unless told otherwise.
class NmeaServer : public QObject {
public:
    explicit NmeaServer(QList<QByteArray> lines, int everyMs = 0)
        : m_lines(std::move(lines)) {
        connect(&m_server, &QTcpServer::newConnection, this, &NmeaServer::welcome);
        m_ticker.setInterval(everyMs);
        connect(&m_ticker, &QTimer::timeout, this, &NmeaServer::tick);
    }

    ~NmeaServer() override {
        // The sockets belong to m_server, which goes last, and must not report to what is gone by then.
        for (QTcpSocket* socket : m_sockets)
            socket->disconnect(this);
    }

    bool listen(quint16 port = 0) { return m_server.listen(QHostAddress::LocalHost, port); }
    void close() { // the port answers no more, and who is connected is cut off
        m_server.close();
        drop();
    }
    void drop() {
        m_ticker.stop();
        for (QTcpSocket* socket : std::exchange(m_sockets, {}))
            socket->abort();
    }
    void linesAtOnce(int lines) { m_atOnce = lines; }
    [[nodiscard]] quint16 port() const { return m_server.serverPort(); }
    [[nodiscard]] QString setting() const { return QStringLiteral("nmea:tcp://127.0.0.1:%1").arg(port()); }
    [[nodiscard]] int connections() const { return m_connections; }
    [[nodiscard]] int connectedNow() const { return static_cast<int>(m_sockets.size()); }
    [[nodiscard]] QByteArray heard() const { return m_heard; }
    void dropAfter(int lines) { m_dropAfter = lines; } // once: the first connection is cut there
    void goOnWhereDropped() { m_rewind = false; }      // a receiver does not start anew for a new listener
    void waitFor(const QByteArray& greeting) { m_waitFor = greeting; }

private:
    void welcome() {
        while (QTcpSocket* socket = m_server.nextPendingConnection()) {
            ++m_connections;
            m_sockets.append(socket);
            if (m_rewind)
                m_next = 0;
            connect(socket, &QTcpSocket::disconnected, this, [this, socket] {
                m_sockets.removeAll(socket);
                socket->deleteLater();
            });
            connect(socket, &QTcpSocket::readyRead, this, [this, socket] {
                m_heard += socket->readAll();
                if (!m_waitFor.isEmpty() && m_heard.contains(m_waitFor))
                    m_ticker.start();
            });
            if (m_waitFor.isEmpty())
                m_ticker.start();
        }
    }
    void tick() {
        for (int i = 0; i < m_atOnce; ++i)
            sendOne();
    }
    void sendOne() {
        if (m_next >= m_lines.size() || m_sockets.isEmpty())
            return m_ticker.stop();
        const QByteArray line = m_lines[m_next++];
        for (QTcpSocket* socket : m_sockets)
            socket->write(line);
        if (m_dropAfter > 0 && m_next >= m_dropAfter) {
            m_dropAfter = 0;
            for (QTcpSocket* socket : m_sockets)
                socket->flush();
            drop();
        }
    }

    QTcpServer m_server;
    QTimer m_ticker;
    QList<QByteArray> m_lines;
    QList<QTcpSocket*> m_sockets;
    QByteArray m_heard;
    QByteArray m_waitFor;
    qsizetype m_next = 0;
    int m_connections = 0;
    int m_atOnce = 1;
    int m_dropAfter = 0;
    bool m_rewind = true;
};

inline QByteArray line(const QByteArray& body) {
    return QByteArray::fromStdString(
               halfcup::place::nmeaSentence({body.constData(), static_cast<std::size_t>(body.size())})) +
           "\r\n";
}

// "4807.0380,N" and "01131.0000,E".
inline QByteArray nmeaAngle(double deg, int width, char positive, char negative) {
    const double all = std::abs(deg);
    const double whole = std::floor(all);
    return QByteArray::number(static_cast<int>(whole)).rightJustified(width, '0') +
           QByteArray::number((all - whole) * 60.0, 'f', 6).rightJustified(9, '0') + ',' +
           (deg < 0 ? negative : positive);
}

inline QByteArray nmeaPlace(const halfcup::place::Place& place) {
    return nmeaAngle(place.latitudeDeg, 2, 'N', 'S') + ',' + nmeaAngle(place.longitudeDeg, 3, 'E', 'W');
}

inline QByteArray nmeaTime(int secondOfDay) {
    const int s = ((secondOfDay % 86400) + 86400) % 86400;
    return QByteArray::number(s / 3600).rightJustified(2, '0') +
           QByteArray::number(s / 60 % 60).rightJustified(2, '0') +
           QByteArray::number(s % 60).rightJustified(2, '0') + ".00";
}

// What a made-up receiver sends in one second.
struct Talk {
    QByteArray talker = "GP";
    bool gga = true;
    bool rmc = true;
    bool gll = false;
    bool gsa = false;
    bool time = true;
    bool valid = true;
    double hdop = 1.0; // below 0: the field stays empty
    QByteArray date = "110626";
};

inline QList<QByteArray> talk(const halfcup::place::Place& place, int secondOfDay, const Talk& how = {}) {
    const QByteArray where = nmeaPlace(place);
    const QByteArray when = how.time ? nmeaTime(secondOfDay) : QByteArray();
    const QByteArray hdop = how.hdop < 0 ? QByteArray() : QByteArray::number(how.hdop, 'f', 2);
    const QByteArray status = how.valid ? "A" : "V";
    QList<QByteArray> lines;
    if (how.gga)
        lines << line(how.talker + "GGA," + when + ',' + where + ',' + (how.valid ? "1" : "0") + ",08," +
                      hdop + ",120.0,M,45.0,M,,");
    if (how.rmc)
        lines << line(how.talker + "RMC," + when + ',' + status + ',' + where + ",0.02,0.0," + how.date +
                      ",,,A");
    if (how.gll)
        lines << line(how.talker + "GLL," + where + ',' + when + ',' + status + ",A");
    if (how.gsa)
        lines << line(how.talker + "GSA,A," + (how.valid ? "3" : "1") + ",01,02,03,04,,,,,,,,,2.00," + hdop +
                      ",1.50");
    return lines;
}

// `count` seconds at `place`, each a little off it in a fixed pattern whose mean is zero over four.
inline QList<QByteArray> talkStill(const halfcup::place::Place& place, int count, int firstSecond,
                                   const Talk& how = {}) {
    QList<QByteArray> lines;
    for (int i = 0; i < count; ++i) {
        const double east = i % 4 == 0 ? 1.0 : i % 4 == 2 ? -1.0 : 0.0;
        const double north = i % 4 == 1 ? 1.0 : i % 4 == 3 ? -1.0 : 0.0;
        lines << talk(halfcup::place::placeAt(place, {east, north}), firstSecond + i, how);
    }
    return lines;
}

// Keeps what a source says, and builds the stamp as the wash does.
class Listener : public QObject {
public:
    using Problem = halfcup::place::PositionSource::Problem;

    explicit Listener(halfcup::place::PositionSource& source) {
        builder.start(QDateTime::currentMSecsSinceEpoch());
        connect(&source, &halfcup::place::PositionSource::fixReceived, this,
                [this](const halfcup::place::Fix& fix) {
                    fixes.append(fix);
                    builder.add(fix, QDateTime::currentMSecsSinceEpoch());
                });
        connect(&source, &halfcup::place::PositionSource::problem, this,
                [this](Problem kind, const QString& sentence) {
                    problems.append(kind);
                    sentences.append(sentence);
                });
    }
    [[nodiscard]] std::optional<halfcup::place::Stamp> stamp() const {
        return builder.stamp(QDateTime::currentMSecsSinceEpoch());
    }
    [[nodiscard]] bool told(Problem kind) const { return problems.contains(kind); }

    QList<halfcup::place::Fix> fixes;
    QList<Problem> problems;
    QStringList sentences;
    halfcup::place::StampBuilder builder;
};

inline double offM(const halfcup::place::Stamp& stamp, const halfcup::place::Place& place) {
    return halfcup::place::distanceM(place, {stamp.latitudeDeg, stamp.longitudeDeg});
}

} // namespace placetest
