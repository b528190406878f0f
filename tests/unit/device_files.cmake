# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
halfcup_test(device_portal SOURCES device_portal.cpp device_bus_services.h LIBRARIES Halfcup::device Qt6::DBus LABELS unit)
