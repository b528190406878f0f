// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Any file as a database or a backup: looked into, opened, and put back in the place of another. An input is
// such a file, or SQL that spoils a good one: bytes alone seldom get past SQLite's own checks, SQL shows us
// values no Halfcup ever wrote.
#include "fuzz_kit.h"
#include "store/backup.h"
#include "store/restore.h"

#include <sqlite3.h>

using namespace halfcup;
using namespace halfcup::fuzz;

namespace {

constexpr std::string_view magic{"SQLite format 3\0", 16};

/// Within bounds: the program itself never runs SQL from outside, and a file as made by it is meant here.
void spoil(const std::string& path, std::string_view statements) {
    sqlite3* database = nullptr;
    require(sqlite3_open(path.c_str(), &database) == SQLITE_OK, "the database to spoil cannot be opened");
    sqlite3_limit(database, SQLITE_LIMIT_LENGTH, 200'000);
    sqlite3_limit(database, SQLITE_LIMIT_ATTACHED, 0);
    int left = 200; // thousands of steps
    sqlite3_progress_handler(
        database, 1000, [](void* rest) { return --*static_cast<int*>(rest) < 0 ? 1 : 0; }, &left);
    const auto nothingOutside = [](void*, int action, const char* name, const char*, const char*,
                                   const char*) {
        const std::string_view pragma = name && action == SQLITE_PRAGMA ? name : "";
        const bool deny = action == SQLITE_ATTACH || pragma == "temp_store_directory" ||
                          pragma == "mmap_size" || pragma == "data_store_directory" ||
                          pragma == "locking_mode";
        return deny ? SQLITE_DENY : SQLITE_OK;
    };
    sqlite3_set_authorizer(database, nothingOutside, nullptr);
    sqlite3_db_config(database, SQLITE_DBCONFIG_DEFENSIVE, 0, nullptr);
    const std::string text(statements);
    for (const char* rest = text.c_str(); *rest != '\0';) { // what is wrong is passed over
        sqlite3_stmt* statement = nullptr;
        const char* next = rest;
        if (sqlite3_prepare_v2(database, rest, -1, &statement, &next) == SQLITE_OK)
            while (statement && sqlite3_step(statement) == SQLITE_ROW) {
            }
        else
            next = rest + std::min(std::string_view(rest).find(';'), std::string_view(rest).size() - 1) + 1;
        sqlite3_finalize(statement);
        rest = next;
    }
    sqlite3_close(database);
}

/// Everything a keeper may do with a file from elsewhere.
void useAll(const std::string& path, const Folder& folder) {
    std::uint64_t chance = 7;
    const std::string before = bytesOf(path);
    try {
        static_cast<void>(store::lookInto(path));
    } catch (const store::BackupError& error) {
        require(error.what()[0] != '\0', "a backup is refused without a word");
    }
    require(bytesOf(path) == before, "looking into a file has changed it");

    const std::string place = folder.file("here.db");
    try {
        const store::Restored restored = store::restoreBackup(path, place, host(chance));
        require(bytesOf(path) == before, "putting a backup back has changed it");
        store::Store store(place, host(chance));
        readAllOf(store);
    } catch (const store::BackupError&) {
    } catch (const store::StoreError&) {
    }
    try { // The program is started on the file itself.
        store::Store store(path, host(chance));
        static_cast<void>(store.integrityReport());
        readAllOf(store);
        records::Yard yard;
        yard.id = store.newId();
        store.save(yard);
    } catch (const store::StoreError&) {
    }
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    static const Folder folder;
    static const std::string small = smallDatabase();
    static const std::string backup = [] {
        putBytes(folder.file("small.db"), small);
        store::makeBackup(folder.file("small.db"), folder.file("small.halfcup-backup"), {nowMs, 120});
        return bytesOf(folder.file("small.halfcup-backup"));
    }();
    folder.clear();
    putBytes(folder.file("here.db"), small);
    const std::string_view bytes = textOf(data, size);
    if (bytes.starts_with(magic.substr(0, 6))) {
        putBytes(folder.file("input.db"), bytes);
        useAll(folder.file("input.db"), folder);
        return 0;
    }
    for (const auto& [good, name] : {std::pair{&small, "input.db"}, {&backup, "input.halfcup-backup"}}) {
        folder.clear();
        putBytes(folder.file("here.db"), small);
        putBytes(folder.file(name), *good);
        spoil(folder.file(name), bytes);
        useAll(folder.file(name), folder);
    }
    return 0;
}
