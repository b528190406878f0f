// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <vector>

struct sqlite3;

namespace halfcup::screens {

/// What every connection of this process to SQLite has run, and how much work each statement was: in steps of
/// SQLite's virtual machine (sqlite3_stmt_status), which are the same on every machine and every day.
class QueryLog {
public:
    struct Ran {
        std::string sql;
        long long steps;
    };
    /// From now on; connections that are open already are not seen. Once in a process.
    static void watch();
    /// What was run since the last call.
    [[nodiscard]] static std::vector<Ran> take();

private:
    static std::vector<Ran>& ran();
    static int onOpened(sqlite3* database, char** error, const void* api);
    static int onEnded(unsigned event, void* context, void* statement, void* nanoseconds);
};

[[nodiscard]] long long stepsOf(const std::vector<QueryLog::Ran>& ran);

/// SQLite's own plan for a statement (EXPLAIN QUERY PLAN), a line each. Throws std::runtime_error.
[[nodiscard]] std::vector<std::string> planOf(const std::string& databasePath, const std::string& sql);

} // namespace halfcup::screens
