# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
add_executable(load_chart_speed load_chart_speed.cpp)
target_link_libraries(load_chart_speed PRIVATE Halfcup::pictures)
halfcup_script_test(pictures_load_chart_speed COMMAND load_chart_speed LABELS bench TIMEOUT 120)
set_tests_properties(pictures_load_chart_speed PROPERTIES RUN_SERIAL ON)
