# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
foreach(part classic constants efficacy field growth law season small stop wash yard)
    halfcup_test(mites_${part} SOURCES mites_${part}.cpp mites_tables.h LIBRARIES Halfcup::mites LABELS unit)
endforeach()
# Ten seconds and more of sums and simulations.
halfcup_test(mites_coverage SOURCES mites_coverage.cpp mites_tables.h LIBRARIES Halfcup::mites LABELS unit TIMEOUT 600)
