# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
#
# What the pages of the season and of treatments are made with, without pages.
halfcup_test(touch_asking_source SOURCES touch_asking_source.cpp LIBRARIES Halfcup::touch LABELS unit)
halfcup_test(touch_position_stamper SOURCES touch_position_stamper.cpp LIBRARIES Halfcup::touch LABELS unit)
halfcup_test(touch_wide_registers SOURCES touch_wide_registers.cpp LIBRARIES Halfcup::touch LABELS unit)
halfcup_test(touch_guard SOURCES touch_guard.cpp LIBRARIES Halfcup::touch LABELS unit)
halfcup_test(touch_typed_date SOURCES touch_typed_date.cpp LIBRARIES Halfcup::touch LABELS unit)
halfcup_test(touch_look SOURCES touch_look.cpp LIBRARIES Halfcup::touch Qt6::Gui LABELS unit)
