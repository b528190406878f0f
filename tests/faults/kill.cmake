# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
find_package(Python3 REQUIRED COMPONENTS Interpreter)
# The real program, without a window, that is killed again and again in the middle of a wash.
add_executable(faults_kill_wash_driver kill_wash.cpp)
target_link_libraries(faults_kill_wash_driver PRIVATE Halfcup::touch halfcup_qml)
halfcup_script_test(faults_kill_wash
    COMMAND ${Python3_EXECUTABLE} -B ${CMAKE_CURRENT_SOURCE_DIR}/kill_wash_test.py
            $<TARGET_FILE:faults_kill_wash_driver>
    TIMEOUT 300 LABELS faults)
# The store alone, killed in the middle of what the other journeys keep.
add_executable(faults_kill_store_driver kill_store.cpp)
target_link_libraries(faults_kill_store_driver PRIVATE Halfcup::store Halfcup::exchange)
halfcup_script_test(faults_kill_store
    COMMAND ${Python3_EXECUTABLE} -B ${CMAKE_CURRENT_SOURCE_DIR}/kill_store_test.py
            $<TARGET_FILE:faults_kill_store_driver> ${CMAKE_SOURCE_DIR}/tests/unit/schemas
    TIMEOUT 900 LABELS faults)
