# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
# The system's own Python: GLib for it comes with the distribution.
find_program(HALFCUP_SYSTEM_PYTHON python3 PATHS /usr/bin NO_DEFAULT_PATH REQUIRED)
halfcup_script_test(platform_linux_files
    COMMAND ${HALFCUP_SYSTEM_PYTHON} -B ${CMAKE_CURRENT_SOURCE_DIR}/platform_linux_files.py ${CMAKE_SOURCE_DIR}
    LABELS unit)
