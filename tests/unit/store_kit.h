// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// What the tests of the store share: a host with a set time, a yard with a colony, and a child process that
// may give up rights and mount disks.
#pragma once

#include "store/store.h"

#include <QCryptographicHash>
#include <QFile>
#include <QString>

#include <functional>
#include <grp.h>
#include <optional>
#include <sched.h>
#include <sqlite3.h>
#include <string>
#include <sys/mount.h>
#include <sys/wait.h>
#include <unistd.h>

namespace halfcup::storetest {

constexpr int skipped = 77;
constexpr std::int64_t startMs = 1'781'514'000'000; // 2026-06-15 09:00 UTC

/// Time stands still unless moved; chance counts.
struct Host {
    std::int64_t nowMs = startMs;
    std::uint64_t chance = 1;

    store::StoreHost asked() {
        return {[this] { return nowMs; }, [this] { return chance += 0x9E3779B97F4A7C15U; }};
    }
};

struct Place {
    records::Yard yard;
    records::Colony colony;
};

inline records::Colony addColony(store::Store& store, const records::RecordId& yardId,
                                 const std::string& label) {
    records::Colony colony;
    colony.id = store.newId();
    colony.yardId = yardId;
    colony.label = label;
    store.save(colony);
    return colony;
}

inline Place addPlace(store::Store& store, const std::string& name = "By the ford") {
    records::Yard yard;
    yard.id = store.newId();
    yard.name = name;
    store.save(yard);
    return {yard, addColony(store, yard.id, "4")};
}

inline records::Sample addSample(store::Store& store, const records::Colony& colony, std::int64_t startedAtMs,
                                 records::SampleState state = records::SampleState::Draft) {
    records::Sample sample;
    sample.id = store.newId();
    sample.colonyId = colony.id;
    sample.yardId = colony.yardId;
    sample.startedAtMs = startedAtMs;
    sample.state = state;
    store.save(sample);
    return sample;
}

/// The kind of StoreError that work throws; nothing where it throws none.
inline std::optional<store::StoreError::Kind> troubleOf(const std::function<void()>& work) {
    try {
        work();
    } catch (const store::StoreError& error) {
        return error.kind();
    }
    return std::nullopt;
}

inline QByteArray bytesOf(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray("(cannot be read)");
}

inline bool putBytes(const QString& path, const QByteArray& bytes) {
    QFile file(path);
    return file.open(QIODevice::WriteOnly | QIODevice::Unbuffered) && file.write(bytes) == bytes.size();
}

/// A database that an earlier version really wrote, copied into the folder: to read it SQLite makes files
/// beside it. Empty where it cannot be copied.
inline QString copyOfSchema(int version, const QString& folder) {
    const QString from = QStringLiteral(HALFCUP_SOURCE_DIR "/tests/unit/schemas/schema_%1.db").arg(version);
    const QString to = folder + QStringLiteral("/schema_%1.db").arg(version);
    if (!QFile::exists(to) &&
        !(QFile::copy(from, to) && QFile::setPermissions(to, QFile::ReadOwner | QFile::WriteOwner)))
        return {};
    return to;
}

/// Runs SQL through the SQLite library itself, not through the store: other eyes. The first value it gives.
inline std::string sql(const QString& path, const std::string& text) {
    sqlite3* database = nullptr;
    std::string first;
    const auto keep = [](void* into, int columns, char** values, char**) {
        auto& value = *static_cast<std::string*>(into);
        if (value.empty() && columns > 0)
            value = values[0] ? values[0] : "NULL";
        return 0;
    };
    char* trouble = nullptr;
    if (sqlite3_open(path.toUtf8().constData(), &database) != SQLITE_OK ||
        sqlite3_exec(database, text.c_str(), keep, &first, &trouble) != SQLITE_OK)
        first = std::string("trouble: ") + (trouble ? trouble : "cannot open");
    sqlite3_free(trouble);
    sqlite3_close(database);
    return first;
}

/// Runs work in a process of its own; its exit code. A crash is 1000 and more, an exception 99.
inline int inChild(const std::function<int()>& work) {
    const pid_t child = fork();
    if (child == 0) {
        int code = 99;
        try {
            code = work();
        } catch (const std::exception& error) {
            qWarning("%s", error.what());
        }
        _exit(code);
    }
    int status = 0;
    waitpid(child, &status, 0);
    return WIFEXITED(status) ? WEXITSTATUS(status) : 1000 + status;
}

/// Mounts an empty disk in memory over the folder, seen by this process alone. False where the system lets
/// the test mount nothing (it is then neither root nor allowed a namespace of its own).
inline bool mountSmallDisk(const QString& folder, const char* options) {
    const uid_t user = geteuid();
    const gid_t group = getegid();
    if (unshare(CLONE_NEWNS | (user == 0 ? 0 : CLONE_NEWUSER)) != 0)
        return false;
    if (user != 0 && !(putBytes("/proc/self/setgroups", "deny") &&
                       putBytes("/proc/self/uid_map", "0 " + QByteArray::number(user) + " 1") &&
                       putBytes("/proc/self/gid_map", "0 " + QByteArray::number(group) + " 1")))
        return false;
    return mount("none", "/", nullptr, MS_REC | MS_PRIVATE, nullptr) == 0 &&
           mount("tmpfs", folder.toUtf8().constData(), "tmpfs", 0, options) == 0;
}

/// Root may write anywhere, so that it becomes nobody.
inline bool giveUpRights() {
    constexpr uid_t nobody = 65534;
    return geteuid() != 0 || (setgroups(0, nullptr) == 0 && setgid(nobody) == 0 && setuid(nobody) == 0);
}

} // namespace halfcup::storetest
