// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "query_log.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <sqlite3.h>

#include <utility>

namespace halfcup::screens {

std::vector<QueryLog::Ran>& QueryLog::ran() {
    static std::vector<Ran> all;
    return all;
}

void QueryLog::watch() {
    sqlite3_auto_extension(reinterpret_cast<void (*)()>(&QueryLog::onOpened));
}

std::vector<QueryLog::Ran> QueryLog::take() {
    return std::exchange(ran(), {});
}

int QueryLog::onOpened(sqlite3* database, char** /*error*/, const void* /*api*/) {
    return sqlite3_trace_v2(database, SQLITE_TRACE_PROFILE, &QueryLog::onEnded, nullptr);
}

int QueryLog::onEnded(unsigned /*event*/, void* /*context*/, void* ended, void* /*nanoseconds*/) {
    auto* statement = static_cast<sqlite3_stmt*>(ended);
    ran().push_back({sqlite3_sql(statement), sqlite3_stmt_status(statement, SQLITE_STMTSTATUS_VM_STEP, 1)});
    return 0;
}

long long stepsOf(const std::vector<QueryLog::Ran>& ran) {
    long long steps = 0;
    for (const QueryLog::Ran& each : ran)
        steps += each.steps;
    return steps;
}

std::vector<std::string> planOf(const std::string& databasePath, const std::string& sql) {
    SQLite::Database database(databasePath);
    SQLite::Statement plan(database, "EXPLAIN QUERY PLAN " + sql);
    std::vector<std::string> lines;
    while (plan.executeStep())
        lines.push_back(plan.getColumn("detail").getString());
    return lines;
}

} // namespace halfcup::screens
