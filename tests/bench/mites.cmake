# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
find_program(HALFCUP_RSCRIPT Rscript)
find_program(HALFCUP_PYTHON python3 REQUIRED)
foreach(program coverage_study mites_speed)
    add_executable(${program} ${program}.cpp)
    target_link_libraries(${program} PRIVATE Halfcup::mites)
endforeach()
# The whole of the ranges, fewer yards; coverage_study without arguments is the full study.
halfcup_script_test(mites_coverage_study COMMAND coverage_study 20000 400 LABELS bench TIMEOUT 300)
halfcup_script_test(mites_speed
    COMMAND mites_speed ${HALFCUP_RSCRIPT} ${CMAKE_CURRENT_SOURCE_DIR}/mites_speed.R LABELS bench TIMEOUT 300)
set_tests_properties(mites_speed PROPERTIES RUN_SERIAL ON)
halfcup_script_test(mites_mutation
    COMMAND ${HALFCUP_PYTHON} -B ${CMAKE_CURRENT_SOURCE_DIR}/../mutation/run ${CMAKE_BINARY_DIR}/mutation
        ${HALFCUP_SHARED}
    LABELS mutation TIMEOUT 1800)

# Not a test: tests/bench/run measures with it.
add_executable(bench_gamma_floor gamma_floor.cpp)
target_link_libraries(bench_gamma_floor PRIVATE Boost::headers)
