# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
#
# Published washes, taken in as a table, have the answers of the calculator.
find_package(Python3 REQUIRED COMPONENTS Interpreter)
halfcup_script_test(published_import
    COMMAND ${Python3_EXECUTABLE} -B ${CMAKE_CURRENT_SOURCE_DIR}/import_field.py $<TARGET_FILE:halfcup-desk>
            ${HALFCUP_SHARED} LABELS published)
