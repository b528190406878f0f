# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
# Not tests: tests/bench/run measures with them. The floor is a window of Qt Quick Controls with nothing in it, its one
# page compiled ahead as ours are; and, no floor but to compare with, one with words and buttons.
find_package(Qt6 6.4 REQUIRED COMPONENTS QuickControls2)
add_executable(bench_empty_window empty_window.cpp)
qt_add_qml_module(bench_empty_window URI HalfcupBenchEmpty VERSION 1.0 NO_PLUGIN RESOURCE_PREFIX /qt/qml
    QML_FILES EmptyWindow.qml WordsWindow.qml)
set_target_properties(bench_empty_window PROPERTIES QT_QMLCACHEGEN_ARGUMENTS --only-bytecode) # as ours
target_link_libraries(bench_empty_window PRIVATE Qt6::Quick Qt6::QuickControls2)

foreach(name start pages taps)
    add_executable(bench_${name} ${name}.cpp)
    target_link_libraries(bench_${name} PRIVATE bench_many_records Halfcup::touch halfcup_qml Qt6::Test)
endforeach()
