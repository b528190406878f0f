# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
#
# What Debian has built for its own machines only, made from the same sources for WebAssembly. platform/web/build puts
# them into HALFCUP_WEB_OUTSIDE: include/ with the headers of Boost and nlohmann's JSON, sqlite3/, sqlitecpp/.
set(HALFCUP_WEB_OUTSIDE "" CACHE PATH "The sources that platform/web/build fetched")
if(NOT EXISTS ${HALFCUP_WEB_OUTSIDE}/sqlite3/sqlite3.c)
    message(FATAL_ERROR "HALFCUP_WEB_OUTSIDE holds no sqlite3/sqlite3.c. Use platform/web/build, which fetches it.")
endif()
enable_language(C)

# Exceptions are caught in JavaScript: Qt's own libraries are built with the older way of long jumps, which WebAssembly's
# exceptions cannot be linked with, and older phones lack those.
add_compile_options(-fexceptions)
add_link_options(-fexceptions)

add_library(halfcup_headers INTERFACE)
target_include_directories(halfcup_headers SYSTEM INTERFACE ${HALFCUP_WEB_OUTSIDE}/include)
# Boost's distributions in double: WebAssembly's long double is 128 bits done by library calls, many times slower, and clang 19
# crashes over a constant of that type.
target_compile_definitions(halfcup_headers INTERFACE BOOST_MATH_PROMOTE_DOUBLE_POLICY=false)
add_library(Boost::headers ALIAS halfcup_headers)
add_library(nlohmann_json::nlohmann_json ALIAS halfcup_headers)

add_library(sqlite3 STATIC ${HALFCUP_WEB_OUTSIDE}/sqlite3/sqlite3.c)
target_include_directories(sqlite3 SYSTEM PUBLIC ${HALFCUP_WEB_OUTSIDE}/sqlite3)
# One thread, no libraries loaded at run time; column metadata as Debian's own has it.
target_compile_definitions(sqlite3 PUBLIC SQLITE_ENABLE_COLUMN_METADATA
    PRIVATE SQLITE_THREADSAFE=0 SQLITE_OMIT_LOAD_EXTENSION SQLITE_DQS=0)
target_compile_options(sqlite3 PRIVATE -w)

file(GLOB sqlitecpp_sources ${HALFCUP_WEB_OUTSIDE}/sqlitecpp/src/*.cpp)
add_library(SQLiteCpp STATIC ${sqlitecpp_sources})
target_include_directories(SQLiteCpp SYSTEM PUBLIC ${HALFCUP_WEB_OUTSIDE}/sqlitecpp/include)
target_compile_options(SQLiteCpp PRIVATE -w)
target_link_libraries(SQLiteCpp PUBLIC sqlite3)
