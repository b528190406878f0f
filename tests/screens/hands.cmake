# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
halfcup_test(screens_hands SOURCES hands_test.cpp LIBRARIES halfcup_stage Qt6::GuiPrivate TIMEOUT 600)
set_property(TEST screens_hands APPEND PROPERTY ENVIRONMENT QT_QUICK_BACKEND=software)
halfcup_test(screens_rest SOURCES rest_test.cpp LIBRARIES halfcup_stage TIMEOUT 600)
set_property(TEST screens_rest APPEND PROPERTY ENVIRONMENT QT_QUICK_BACKEND=software)
halfcup_test(screens_reader SOURCES reader_test.cpp LIBRARIES halfcup_stage Qt6::GuiPrivate TIMEOUT 300)
set_property(TEST screens_reader APPEND PROPERTY ENVIRONMENT QT_QUICK_BACKEND=software)
halfcup_test(screens_room SOURCES room_test.cpp LIBRARIES halfcup_stage Qt6::GuiPrivate TIMEOUT 300)
set_property(TEST screens_room APPEND PROPERTY ENVIRONMENT QT_QUICK_BACKEND=software)
halfcup_test(screens_press SOURCES press_test.cpp LIBRARIES Halfcup::touch halfcup_qml Qt6::Quick)
set_property(TEST screens_press APPEND PROPERTY ENVIRONMENT QT_QUICK_BACKEND=software)
halfcup_test(screens_side_by_side SOURCES side_by_side_test.cpp LIBRARIES Halfcup::touch halfcup_qml Qt6::Quick)
set_property(TEST screens_side_by_side APPEND PROPERTY ENVIRONMENT QT_QUICK_BACKEND=software)
