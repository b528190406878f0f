# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
#
# The real pages on a real database, touched and measured off-screen.
add_library(halfcup_stage STATIC browser_screens.cpp measure.cpp method_screens.cpp other_phone.h plan_screens.cpp screens.cpp season_screens.cpp stage.cpp story_screens.cpp two_phones.cpp two_phones.h
    yard_plan_screens.cpp)
target_link_libraries(halfcup_stage PUBLIC Halfcup::touch halfcup_qml Qt6::Test Qt6::Quick Qt6::QuickTest)

foreach(area screens wash)
    halfcup_test(screens_${area} SOURCES ${area}_test.cpp LIBRARIES halfcup_stage TIMEOUT 600)
    set_property(TEST screens_${area} APPEND PROPERTY ENVIRONMENT QT_QUICK_BACKEND=software)
endforeach()
