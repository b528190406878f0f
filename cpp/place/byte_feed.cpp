// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "place/byte_feed.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QTcpSocket>
#include <QTimer>
#ifdef HALFCUP_HAS_SERIALPORT
#include <QSerialPort>
#endif

#include <algorithm>
#include <array>
#include <deque>
#include <string>

namespace halfcup::place {

namespace {

// At most this much is held of what a sender pushes; the rest waits in the network.
constexpr qint64 kReadAtMost = 64 * 1024;
constexpr int kConnectWithinMs = 10'000;
// Receivers speak every second. A line that is silent for this long is dead, whatever the socket says: a
// receiver that was switched off does not close its connection.
constexpr int kSilentAtMostMs = 30'000;

std::string_view view(const QByteArray& bytes) {
    return {bytes.constData(), static_cast<std::size_t>(bytes.size())};
}

class TcpFeed : public ByteFeed {
    Q_OBJECT
public:
    TcpFeed(const SourceSetting& setting, QByteArray greeting)
        : ByteFeed(nullptr)
        , m_setting(setting)
        , m_greeting(std::move(greeting)) {
        m_socket.setReadBufferSize(kReadAtMost);
        m_patience.setSingleShot(true);
        connect(&m_patience, &QTimer::timeout, this, [this] {
            finish(m_socket.state() == QAbstractSocket::ConnectedState
                       ? tr("%1 has been silent for half a minute.")
                       : tr("%1 does not answer."));
        });
        connect(&m_socket, &QTcpSocket::connected, this, [this] {
            m_socket.write(m_greeting);
            m_patience.start(kSilentAtMostMs);
            emit opened();
        });
        connect(&m_socket, &QTcpSocket::readyRead, this, [this] {
            m_patience.start(kSilentAtMostMs);
            emit bytes(m_socket.read(kReadAtMost));
        });
        connect(&m_socket, &QTcpSocket::errorOccurred, this, [this](QAbstractSocket::SocketError error) {
            switch (error) {
            case QAbstractSocket::ConnectionRefusedError:
                return finish(tr("Nothing answers at %1."));
            case QAbstractSocket::HostNotFoundError:
                return finish(tr("The host of %1 is not known on this network."));
            case QAbstractSocket::RemoteHostClosedError:
                return finish(tr("%1 has closed the connection."));
            default:
                return finish(tr("The connection to %1 is lost."));
            }
        });
        connect(&m_socket, &QTcpSocket::disconnected, this,
                [this] { finish(tr("%1 has closed the connection.")); });
    }

    ~TcpFeed() override { m_socket.disconnect(this); }

    void open() override {
        m_patience.start(kConnectWithinMs);
        m_socket.connectToHost(m_setting.host, m_setting.port);
    }

private:
    void finish(const QString& sentence) {
        if (std::exchange(m_finished, true))
            return;
        m_patience.stop();
        const QByteArray rest = m_socket.isOpen() ? m_socket.readAll() : QByteArray();
        if (!rest.isEmpty())
            emit bytes(rest);
        const bool ipv6 = m_setting.host.contains(u':');
        emit lost(Problem::Closed, sentence.arg((ipv6 ? QStringLiteral("[%1]:%2") : QStringLiteral("%1:%2"))
                                                    .arg(m_setting.host, QString::number(m_setting.port))) +
                                       u' ' + tr("It is tried again."));
    }

    SourceSetting m_setting;
    QByteArray m_greeting;
    QTcpSocket m_socket;
    QTimer m_patience;
    bool m_finished = false;
};

class FileFeed : public ByteFeed {
    Q_OBJECT
public:
    FileFeed(const QString& path, bool fast)
        : ByteFeed(nullptr)
        , m_file(path)
        , m_fast(fast) {
        m_timer.setSingleShot(true);
        connect(&m_timer, &QTimer::timeout, this, &FileFeed::play);
    }

    void open() override {
        const QFileInfo info(m_file.fileName());
        if (!info.exists())
            return finish(Problem::NoSource, tr("There is no file %1. It is looked for again."));
        // Opening a pipe would wait for its other end, and a device file never ends.
        if (!info.isFile())
            return finish(Problem::NoSource, tr("%1 is not a file, so it cannot be played as a recording."));
        if (!m_file.open(QIODevice::ReadOnly))
            return finish(Problem::Denied, tr("The file %1 cannot be read. It is tried again."));
        emit opened();
        m_timer.start(0);
    }

private:
    void finish(Problem kind, const QString& sentence) { emit lost(kind, sentence.arg(m_file.fileName())); }

    // One round: what belongs to one moment of the recording.
    void play() {
        for (int i = 0; i < kSentencesAtOnce; ++i) {
            if (m_waiting.empty() && !readMore()) {
                emit ended();
                return;
            }
            if (m_waiting.empty())
                continue;
            const std::string sentence = std::move(m_waiting.front());
            const auto time = nmeaTimeOfDayMs(sentence);
            const int pauseMs = time && m_time && *time != *m_time ? pauseBetween(*m_time, *time) : 0;
            if (pauseMs > 0 && !m_fast && !m_waited) {
                m_waited = true;
                m_waiting.front() = sentence;
                m_timer.start(pauseMs);
                return;
            }
            m_waited = false;
            m_waiting.pop_front();
            if (time)
                m_time = time;
            emit bytes(QByteArray::fromStdString(sentence + "\r\n"));
        }
        // A recording that names no times is played at some ten sentences a second, the pace of a real one.
        m_timer.start(m_fast ? 0 : m_time ? 1 : 100 * kSentencesAtOnce);
    }

    static int pauseBetween(int fromMs, int toMs) {
        constexpr int dayMs = 24 * 3600 * 1000;
        const int pauseMs = ((toMs - fromMs) % dayMs + dayMs) % dayMs;
        // A gap or a step back is in the recording, but nobody waits hours for it.
        return pauseMs > kLongestPauseMs ? 1000 : pauseMs;
    }

    bool readMore() {
        const QByteArray chunk = m_file.read(4096);
        if (!chunk.isEmpty()) {
            m_lines.feed(view(chunk), [this](std::string_view s) { m_waiting.emplace_back(s); });
            return true;
        }
        if (std::exchange(m_atEnd, true))
            return false;
        // The last line may lack its end.
        m_lines.feed("\n", [this](std::string_view s) { m_waiting.emplace_back(s); });
        return true;
    }

    static constexpr int kSentencesAtOnce = 10;
    static constexpr int kLongestPauseMs = 5000;

    QFile m_file;
    bool m_fast;
    QTimer m_timer;
    NmeaLines m_lines;
    std::deque<std::string> m_waiting;
    std::optional<int> m_time;
    bool m_waited = false;
    bool m_atEnd = false;
};

#ifdef HALFCUP_HAS_SERIALPORT
class SerialFeed : public ByteFeed {
    Q_OBJECT
public:
    explicit SerialFeed(const SourceSetting& setting)
        : ByteFeed(nullptr)
        , m_setting(setting) {
        m_port.setPortName(setting.path);
        m_port.setReadBufferSize(kReadAtMost);
        connect(&m_port, &QSerialPort::readyRead, this, [this] {
            const QByteArray read = m_port.read(kReadAtMost);
            m_lines.feed(view(read), [](std::string_view) {});
            emit bytes(read);
        });
        connect(&m_port, &QSerialPort::errorOccurred, this, &SerialFeed::onError);
        connect(&m_hunt, &QTimer::timeout, this, &SerialFeed::tryNextSpeed);
        // Qt 6.8 does not tell that a receiver was pulled out; its file goes with it.
        connect(&m_presence, &QTimer::timeout, this, [this] {
            if (!QFileInfo::exists(QDir(QStringLiteral("/dev")).absoluteFilePath(m_setting.path)))
                onError(QSerialPort::ResourceError);
        });
    }

    ~SerialFeed() override { m_port.disconnect(this); }

    void open() override {
        m_port.setBaudRate(m_setting.baud > 0 ? m_setting.baud : kSpeeds[0]);
        if (!m_port.open(QIODevice::ReadOnly))
            return; // onError has told
        emit opened();
        if (m_setting.baud == 0)
            m_hunt.start(kListenMs);
#ifdef Q_OS_UNIX
        m_presence.start(kPresenceMs);
#endif
    }

private:
    void onError(QSerialPort::SerialPortError error) {
        switch (error) {
        case QSerialPort::NoError:
        case QSerialPort::TimeoutError:
            return;
        case QSerialPort::DeviceNotFoundError:
            return finish(Problem::NoSource, tr("There is no serial line %1. It is looked for again."));
        case QSerialPort::PermissionError:
            return finish(
                Problem::Denied,
                tr("The serial line %1 may not be opened: another program has it, or this user has no "
                   "right to it. It is tried again."));
        default:
            return finish(Problem::Closed, tr("The serial line %1 is lost. It is tried again."));
        }
    }

    void finish(Problem kind, const QString& sentence) {
        if (std::exchange(m_finished, true))
            return;
        m_hunt.stop();
        emit lost(kind, sentence.arg(m_setting.path));
    }

    // The wrong speed gives bytes and no sentence.
    void tryNextSpeed() {
        if (m_lines.sentences() > 0)
            return m_hunt.stop();
        m_speed = (m_speed + 1) % kSpeeds.size();
        m_port.setBaudRate(kSpeeds[m_speed]);
        m_lines.reset();
    }

    // NMEA 0183, then what receivers are commonly set to.
    static constexpr std::array<int, 4> kSpeeds{4800, 9600, 38400, 115200};
    static constexpr int kListenMs = 3000;
    static constexpr int kPresenceMs = 1000;

    SourceSetting m_setting;
    QSerialPort m_port;
    QTimer m_hunt;
    QTimer m_presence;
    NmeaLines m_lines;
    std::size_t m_speed = 0;
    bool m_finished = false;
};
#endif

// Stands where a feed cannot exist in this build.
class NoFeed : public ByteFeed {
    Q_OBJECT
public:
    NoFeed()
        : ByteFeed(nullptr) {}
    void open() override {
        emit lost(Problem::NoSource, tr("This build of the program knows no serial lines."));
    }
};

} // namespace

std::unique_ptr<ByteFeed> makeByteFeed(const SourceSetting& setting, bool fast) {
    switch (setting.kind) {
    case SourceSetting::Kind::File:
        return std::make_unique<FileFeed>(setting.path, fast);
    case SourceSetting::Kind::Tcp:
        return std::make_unique<TcpFeed>(setting, QByteArray());
    case SourceSetting::Kind::Gpsd:
        // gpsd says nothing but its version until it is asked (its manual, "?WATCH").
        return std::make_unique<TcpFeed>(setting, QByteArray("?WATCH={\"enable\":true,\"nmea\":true};\n"));
    case SourceSetting::Kind::Serial:
#ifdef HALFCUP_HAS_SERIALPORT
        return std::make_unique<SerialFeed>(setting);
#else
        return std::make_unique<NoFeed>();
#endif
    default:
        return nullptr;
    }
}

} // namespace halfcup::place

#include "byte_feed.moc"
