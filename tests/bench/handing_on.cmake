# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
# Not tests: tests/bench/run measures with them.
add_executable(bench_make_records make_records.cpp)
target_link_libraries(bench_make_records PRIVATE Halfcup::store Halfcup::season)
