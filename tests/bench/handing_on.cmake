# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
# Not a test: handing_on.py measures with it.
add_executable(handing_on_make handing_on_make.cpp)
target_link_libraries(handing_on_make PRIVATE Halfcup::store)
