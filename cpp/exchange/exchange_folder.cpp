// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "exchange/exchange_folder.h"

#include "exchange/exchange_writer.h"

#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <cerrno>
#include <nlohmann/json.hpp>
#include <unistd.h>
#include <utility>

namespace halfcup::exchange {

using nlohmann::json;

std::string FolderState::toText() const {
    json list = json::object();
    for (const auto& [name, other] : others)
        list[name] = {other.done, other.size, other.modifiedMs, other.rest};
    return json{{"folder", folder},    {"device", device},      {"others", list},
                {"own_size", ownSize}, {"own_stamp", ownStamp}, {"merge", merge}}
        .dump(-1, ' ', false, json::error_handler_t::replace);
}

FolderState FolderState::from(const std::string& text, const std::string& folder, const std::string& device) {
    FolderState fresh;
    fresh.folder = folder;
    fresh.device = device;
    const json object = json::parse(text, nullptr, false);
    if (!object.is_object())
        return fresh;
    try {
        FolderState state = fresh;
        if (object.at("folder") != folder || object.at("device") != device)
            return fresh;
        for (const auto& [name, other] : object.at("others").items())
            state.others[name] = {other.at(0).get<std::int64_t>(), other.at(1).get<std::int64_t>(),
                                  other.at(2).get<std::int64_t>(), other.at(3).get<bool>()};
        state.ownSize = object.at("own_size").get<std::int64_t>();
        state.ownStamp = object.at("own_stamp").get<std::string>();
        state.merge = object.at("merge").get<std::int64_t>();
        return state;
    } catch (const json::exception&) {
        return fresh; // everything is read again, which changes nothing that was read before
    }
}

ExchangeFolder::ExchangeFolder(QString path, std::string device)
    : m_path(std::move(path))
    , m_device(std::move(device)) {}

FolderTrouble ExchangeFolder::trouble() const {
    const QFileInfo info(m_path);
    if (m_path.isEmpty() || !info.isDir())
        return FolderTrouble::NotThere;
    return info.isReadable() && info.isExecutable() ? FolderTrouble::None : FolderTrouble::CannotRead;
}

QString ExchangeFolder::ownFile() const {
    return QDir(m_path).filePath(
        QStringLiteral("halfcup-%1%2")
            .arg(QString::fromStdString(m_device), QString::fromLatin1(exchangeEnding)));
}

std::vector<Arrival> ExchangeFolder::look(FolderState& state, std::int64_t nowMs,
                                          std::vector<std::string>& waiting) const {
    std::vector<Arrival> arrivals;
    const QString pattern = QStringLiteral("*") + QString::fromLatin1(exchangeEnding);
    const QString own = QFileInfo(ownFile()).fileName();
    // Without hidden files: synchronisers keep what they are still writing under such names.
    for (const QFileInfo& info : QDir(m_path).entryInfoList({pattern}, QDir::Files, QDir::Name)) {
        if (info.fileName() == own)
            continue;
        const std::string name = info.fileName().toStdString();
        FolderState::Other& known = state.others[name];
        const std::int64_t size = info.size();
        const std::int64_t modifiedMs = info.lastModified().toMSecsSinceEpoch();
        const bool unchanged = size == known.size && modifiedMs == known.modifiedMs;
        if (unchanged && (known.done == size || known.rest))
            continue;
        QFile file(info.filePath());
        if (size > largestExchangeFile || !file.open(QIODevice::ReadOnly)) {
            waiting.push_back(name);
            continue;
        }
        // A file that became shorter, or does not go on where it ended, was written anew: from its start
        // then.
        std::int64_t from = known.done <= size ? known.done : 0;
        if (from > 0 && from < size) {
            file.seek(from);
            if (!readLine(file.readLine().trimmed().toStdString()).header)
                from = 0;
        }
        const std::int64_t complete = completeUpTo(file, from);
        FolderState::Other then{complete, size, modifiedMs, false};
        const bool lainLong = unchanged && nowMs - modifiedMs >= patienceMs;
        std::int64_t until = complete;
        if (complete < size && lainLong) {
            until = size;
            then.rest = true;
        } else if (complete < size) {
            waiting.push_back(name);
        }
        if (until > from)
            arrivals.push_back({name, from, until, then});
        known.size = size;
        known.modifiedMs = modifiedMs;
    }
    return arrivals;
}

ExchangeReport ExchangeFolder::read(const Arrival& arrival, const ExchangeTaker& taker) const {
    ExchangeReport report;
    QFile file(QDir(m_path).filePath(QString::fromStdString(arrival.name)));
    if (!file.open(QIODevice::ReadOnly) || !file.seek(arrival.from))
        report.refusal = ExchangeRefusal::CannotRead; // it vanished between two looks
    else
        report = readExchange(file, taker, arrival.until);
    return report;
}

bool ExchangeFolder::ownFileIsAsLeft(const FolderState& state) const {
    const QFileInfo info(ownFile());
    return info.isFile() && state.ownSize > 0 && info.size() == state.ownSize;
}

std::optional<FileError> ExchangeFolder::append(FolderState& state,
                                                const std::function<void(const ByteSink&)>& content) const {
    QFile file(ownFile());
    errno = 0;
    bool ok = file.open(QIODevice::WriteOnly | QIODevice::Append | QIODevice::Unbuffered);
    const auto failed = [&] {
        const FileError error{problemFrom(errno), file.errorString()};
        if (file.isOpen())
            file.resize(state.ownSize);
        return error;
    };
    if (!ok)
        return failed();
    content([&](std::string_view bytes) {
        const auto size = static_cast<qint64>(bytes.size());
        ok = ok && file.write(bytes.data(), size) == size;
    });
    if (!ok || fsync(file.handle()) != 0)
        return failed();
    state.ownSize = file.size();
    return std::nullopt;
}

std::optional<FileError>
ExchangeFolder::writeAnew(FolderState& state, const std::function<void(const ByteSink&)>& content) const {
    const auto error = writeSafely(ownFile(), content);
    if (!error)
        state.ownSize = QFileInfo(ownFile()).size();
    return error;
}

} // namespace halfcup::exchange
