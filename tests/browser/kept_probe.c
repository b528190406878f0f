// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
//
// A small program on the same files (platform/web/kept_files.js), for tests of what stays when a tab is killed: rows in a
// database that is opened as the program opens its own (cpp/store/open_database.cpp).
#include <emscripten.h>
#include <sqlite3.h>
#include <stdio.h>
#include <sys/stat.h>
#include <unistd.h>

int halfcupIsAllKept(void);

static sqlite3* database;
static char text[200];

static int run(const char* sql) {
    return sqlite3_exec(database, sql, NULL, NULL, NULL);
}

static int number(const char* sql) {
    sqlite3_stmt* statement = NULL;
    int result = -1;
    if (sqlite3_prepare_v2(database, sql, -1, &statement, NULL) == SQLITE_OK && sqlite3_step(statement) == SQLITE_ROW)
        result = sqlite3_column_int(statement, 0);
    sqlite3_finalize(statement);
    return result;
}

// 0 or SQLite's number for what went wrong.
EMSCRIPTEN_KEEPALIVE int probeOpen(void) {
    mkdir("/kept/records", 0700);
    const int code = sqlite3_open("/kept/records/probe.db", &database);
    if (code != SQLITE_OK)
        return code;
    run("PRAGMA synchronous = FULL");
    run("PRAGMA journal_mode = WAL");
    return run("CREATE TABLE IF NOT EXISTS act (number INTEGER PRIMARY KEY, words TEXT)");
}

EMSCRIPTEN_KEEPALIVE int probeAdd(int n) {
    snprintf(text, sizeof text, "INSERT INTO act VALUES (%d, 'act %d of a test')", n, n);
    return run(text);
}

EMSCRIPTEN_KEEPALIVE int probeCount(void) {
    return number("SELECT count(*) FROM act");
}

EMSCRIPTEN_KEEPALIVE int probeLast(void) {
    return number("SELECT coalesce(max(number), 0) FROM act");
}

EMSCRIPTEN_KEEPALIVE int probeIsSound(void) {
    return number("SELECT count(*) FROM pragma_integrity_check WHERE integrity_check = 'ok'");
}

EMSCRIPTEN_KEEPALIVE int probeIsAllKept(void) {
    return halfcupIsAllKept();
}

int main(void) {
    return 0;
}
