# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
#
# The exchange folder on its page.
halfcup_test(screens_folder SOURCES folder_test.cpp other_phone.h LIBRARIES halfcup_stage TIMEOUT 600)
set_property(TEST screens_folder APPEND PROPERTY ENVIRONMENT QT_QUICK_BACKEND=software)
