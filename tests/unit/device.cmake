# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
halfcup_test(device_clock SOURCES device_clock.cpp LIBRARIES Halfcup::device LABELS unit)
halfcup_test(device_bus SOURCES device_bus.cpp LIBRARIES Halfcup::device Qt6::DBus LABELS unit)
halfcup_test(device_brightness SOURCES device_brightness.cpp LIBRARIES Halfcup::device Qt6::DBus LABELS unit)
halfcup_test(device_text_scale SOURCES device_text_scale.cpp LIBRARIES Halfcup::device Qt6::DBus LABELS unit)
halfcup_test(device_tones SOURCES device_tones.cpp LIBRARIES Halfcup::device halfcup_sound_objects LABELS unit)
halfcup_test(device_keys SOURCES device_keys.cpp LIBRARIES Halfcup::device LABELS unit)
halfcup_test(device_folders SOURCES device_folders.cpp LIBRARIES Halfcup::device LABELS unit)
halfcup_test(device_fakes SOURCES device_fakes.cpp LIBRARIES Halfcup::device LABELS unit)
halfcup_test(device_voice SOURCES device_voice.cpp LIBRARIES Halfcup::device halfcup_sound_objects LABELS unit)
halfcup_test(device_loaded_sound SOURCES device_loaded_sound.cpp LIBRARIES Halfcup::device LABELS unit)
find_package(Python3 REQUIRED COMPONENTS Interpreter)
halfcup_script_test(device_sounds_are_their_notes
    COMMAND ${Python3_EXECUTABLE} ${CMAKE_SOURCE_DIR}/assets/sounds/make.py --check LABELS unit)
