# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
#
# Backups made, looked into and asked back, touched through on the real pages and measured.
halfcup_test(screens_backup SOURCES backup_test.cpp LIBRARIES halfcup_stage TIMEOUT 600)
set_property(TEST screens_backup APPEND PROPERTY ENVIRONMENT QT_QUICK_BACKEND=software)
halfcup_test(screens_trouble SOURCES trouble_test.cpp LIBRARIES halfcup_stage TIMEOUT 300)
set_property(TEST screens_trouble APPEND PROPERTY ENVIRONMENT QT_QUICK_BACKEND=software)
