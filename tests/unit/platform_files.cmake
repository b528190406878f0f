# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
# The system's own Python: GLib for it comes with the distribution.
find_program(HALFCUP_SYSTEM_PYTHON python3 PATHS /usr/bin NO_DEFAULT_PATH REQUIRED)
halfcup_script_test(platform_linux_files
    COMMAND ${HALFCUP_SYSTEM_PYTHON} -B ${CMAKE_CURRENT_SOURCE_DIR}/platform_linux_files.py ${CMAKE_SOURCE_DIR}
    LABELS unit TIMEOUT 300)
halfcup_script_test(platform_icons
    COMMAND ${HALFCUP_SYSTEM_PYTHON} -B ${CMAKE_SOURCE_DIR}/assets/icons/make.py --check
    LABELS unit TIMEOUT 300)
halfcup_script_test(platform_android
    COMMAND ${HALFCUP_SYSTEM_PYTHON} -B ${CMAKE_CURRENT_SOURCE_DIR}/platform_android.py ${CMAKE_SOURCE_DIR}
    LABELS unit TIMEOUT 300)
halfcup_script_test(platform_android_java
    COMMAND ${HALFCUP_SYSTEM_PYTHON} -B ${CMAKE_CURRENT_SOURCE_DIR}/platform_android_java.py ${CMAKE_SOURCE_DIR}
    LABELS unit TIMEOUT 300)
halfcup_script_test(platform_ios
    COMMAND ${HALFCUP_SYSTEM_PYTHON} -B ${CMAKE_CURRENT_SOURCE_DIR}/platform_ios.py ${CMAKE_SOURCE_DIR}
    LABELS unit TIMEOUT 300)
