// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "place/source_setting.h"

#include <QCoreApplication>
#include <QUrl>

namespace halfcup::place {

namespace {

constexpr quint16 kGpsdPort = 2947; // registered with IANA for gpsd

QString say(const char* text) {
    return QCoreApplication::translate("SourceSetting", text);
}

SourceSetting bad(const QString& setting, const QString& why) {
    SourceSetting result;
    result.problem = say(QT_TRANSLATE_NOOP(
                             "SourceSetting",
                             "The position source \"%1\" cannot be used: %2 It can be \"default\", \"none\", "
                             "\"nmea:file:PATH\", \"nmea:tcp://HOST:PORT\", \"nmea:serial:/dev/NAME\" or "
                             "\"gpsd://HOST:PORT\"."))
                         .arg(setting.left(80), why);
    return result;
}

// "tcp://host:port", also "[::1]:port"; true if a host came out.
bool readHostAndPort(const QString& url, quint16 portIfNone, SourceSetting& into) {
    const QUrl read(url, QUrl::StrictMode);
    const bool nothingElse = read.userInfo().isEmpty() && (read.path().isEmpty() || read.path() == u"/") &&
                             !read.hasQuery() && !read.hasFragment();
    if (!read.isValid() || read.host().isEmpty() || !nothingElse)
        return false;
    const int port = read.port(portIfNone);
    if (port < 1 || port > 65535)
        return false;
    into.host = read.host();
    into.port = static_cast<quint16>(port);
    return true;
}

} // namespace

SourceSetting readSourceSetting(const QString& setting) {
    const QString text = setting.trimmed();
    SourceSetting result;
    if (text.isEmpty() || text == u"default") {
        result.kind = SourceSetting::Kind::PlatformDefault;
        return result;
    }
    if (text == u"none") {
        result.kind = SourceSetting::Kind::None;
        return result;
    }
    if (text.startsWith(u"nmea:file:")) {
        result.path = text.mid(10);
        if (result.path.isEmpty() || result.path.contains(QChar::Null))
            return bad(text, say(QT_TRANSLATE_NOOP("SourceSetting", "the name of the file is missing.")));
        result.kind = SourceSetting::Kind::File;
        return result;
    }
    if (text.startsWith(u"nmea:tcp://")) {
        if (!readHostAndPort(text.mid(5), 0, result))
            return bad(text, say(QT_TRANSLATE_NOOP("SourceSetting",
                                                   "it needs a host and a port between 1 and 65535.")));
        result.kind = SourceSetting::Kind::Tcp;
        return result;
    }
    if (text.startsWith(u"gpsd://")) {
        if (!readHostAndPort(text, kGpsdPort, result))
            return bad(text,
                       say(QT_TRANSLATE_NOOP("SourceSetting",
                                             "it needs a host, and a port between 1 and 65535 if any.")));
        result.kind = SourceSetting::Kind::Gpsd;
        return result;
    }
    if (text.startsWith(u"nmea:serial:")) {
        const QString rest = text.mid(12);
        const auto question = rest.indexOf(u"?baud=");
        result.path = rest.left(question);
        bool baudOk = true;
        if (question >= 0)
            result.baud = rest.mid(question + 6).toInt(&baudOk);
        if (result.path.isEmpty() || result.path.contains(QChar::Null))
            return bad(text,
                       say(QT_TRANSLATE_NOOP("SourceSetting", "the name of the serial line is missing.")));
        if (question >= 0 && (!baudOk || result.baud < 50 || result.baud > 4'000'000))
            return bad(text,
                       say(QT_TRANSLATE_NOOP("SourceSetting", "the speed behind \"baud=\" is no number of "
                                                              "bits a second.")));
        result.kind = SourceSetting::Kind::Serial;
        return result;
    }
    return bad(text, say(QT_TRANSLATE_NOOP("SourceSetting", "it is not one of the known forms.")));
}

} // namespace halfcup::place
