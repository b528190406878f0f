# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
find_package(Python3 REQUIRED COMPONENTS Interpreter)
halfcup_test(published_statistics SOURCES published_statistics.cpp published_checks.h LIBRARIES Halfcup::mites LABELS published)
halfcup_test(published_washes SOURCES published_washes.cpp published_checks.h LIBRARIES Halfcup::mites LABELS published)
halfcup_test(published_field SOURCES published_field.cpp published_checks.h LIBRARIES Halfcup::mites Halfcup::handbook
    LABELS published)
halfcup_script_test(published_reference
    COMMAND ${Python3_EXECUTABLE} -B ${CMAKE_CURRENT_SOURCE_DIR}/desk_reference.py $<TARGET_FILE:halfcup-desk>
    ${HALFCUP_SHARED} LABELS published)

# R as the reference: the same figures from R's own functions, on rows drawn with fixed seeds.
add_executable(stop_rule_rows in_r/stop_rule_rows.cpp)
target_link_libraries(stop_rule_rows PRIVATE Halfcup::mites)
foreach(what washes growth stop_rule)
    halfcup_script_test(published_in_r_${what}
        COMMAND ${CMAKE_CURRENT_SOURCE_DIR}/in_r/run.sh ${CMAKE_CURRENT_SOURCE_DIR}/in_r/${what}.R
        $<TARGET_FILE:halfcup-desk> $<TARGET_FILE:stop_rule_rows> LABELS published r)
endforeach()

# What a page for people prints is what the program says.
halfcup_script_test(published_page
    COMMAND ${Python3_EXECUTABLE} -B ${CMAKE_CURRENT_SOURCE_DIR}/page_figures.py $<TARGET_FILE:halfcup-desk>
    ${CMAKE_SOURCE_DIR} LABELS published)
