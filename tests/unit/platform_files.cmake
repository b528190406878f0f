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
halfcup_script_test(platform_man
    COMMAND ${HALFCUP_SYSTEM_PYTHON} -B ${CMAKE_CURRENT_SOURCE_DIR}/platform_man.py ${CMAKE_SOURCE_DIR}
        $<TARGET_FILE:halfcup> $<TARGET_FILE:halfcup-desk>
    LABELS unit TIMEOUT 120)
halfcup_script_test(platform_self_test
    COMMAND ${HALFCUP_SYSTEM_PYTHON} -B ${CMAKE_CURRENT_SOURCE_DIR}/platform_self_test.py $<TARGET_FILE:halfcup>
    LABELS unit TIMEOUT 300)
get_target_property(qt_headers Qt6::Core INTERFACE_INCLUDE_DIRECTORIES)
list(FILTER qt_headers INCLUDE REGEX "/QtCore$")
list(GET qt_headers 0 qt_headers)
get_filename_component(qt_headers ${qt_headers} DIRECTORY)
halfcup_script_test(platform_android_jni
    COMMAND ${HALFCUP_SYSTEM_PYTHON} -B ${CMAKE_CURRENT_SOURCE_DIR}/platform_android_jni.py ${CMAKE_SOURCE_DIR}
        ${CMAKE_CXX_COMPILER} ${qt_headers}
    LABELS unit TIMEOUT 300)
halfcup_script_test(platform_roots
    COMMAND ${HALFCUP_SYSTEM_PYTHON} -B ${CMAKE_CURRENT_SOURCE_DIR}/platform_roots.py ${CMAKE_SOURCE_DIR} ${CMAKE_COMMAND}
    LABELS unit TIMEOUT 300)
halfcup_script_test(platform_web
    COMMAND ${HALFCUP_SYSTEM_PYTHON} -B ${CMAKE_CURRENT_SOURCE_DIR}/platform_web.py ${CMAKE_SOURCE_DIR}
    LABELS unit TIMEOUT 300)
