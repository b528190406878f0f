# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
find_package(Python3 REQUIRED COMPONENTS Interpreter)
halfcup_test(handbook_read SOURCES handbook_read.cpp handbook_files.h LIBRARIES Halfcup::handbook LABELS unit)
halfcup_test(handbook_values SOURCES handbook_values.cpp handbook_files.h LIBRARIES Halfcup::handbook LABELS unit)
halfcup_script_test(handbook_schema
    COMMAND ${Python3_EXECUTABLE} -B ${CMAKE_CURRENT_SOURCE_DIR}/handbook_schema.py ${CMAKE_SOURCE_DIR} LABELS unit)
halfcup_script_test(handbook_constants
    COMMAND ${Python3_EXECUTABLE} -B ${CMAKE_CURRENT_SOURCE_DIR}/handbook_constants.py ${CMAKE_SOURCE_DIR} LABELS unit)
