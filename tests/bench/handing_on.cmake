# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
# Not tests: tests/bench/run measures with them.
add_library(bench_many_records STATIC many_records.cpp)
target_include_directories(bench_many_records PUBLIC .)
target_link_libraries(bench_many_records PUBLIC Halfcup::store Halfcup::season)
add_executable(bench_make_records make_records.cpp)
target_link_libraries(bench_make_records PRIVATE bench_many_records)
