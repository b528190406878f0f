# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
#
# Pictures, looked at as drawings. HALFCUP_PICTURES=FOLDER keeps them as files.
foreach(part comb load load_history outlook parts plan season_strip slopes yard)
    halfcup_test(pictures_${part} SOURCES pictures_${part}.cpp pictures_kit.h LIBRARIES Halfcup::pictures LABELS unit)
endforeach()
