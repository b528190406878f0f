// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "touch/services.h"

#include <QStringList>

namespace halfcup::touch {

/// What must be said and asked once before a treatment is kept: a course past the turn date, one that
/// overlaps another of the same substance in a colony, supers on within the course or the withdrawal, a
/// product that has expired, a withdrawal that is not written down, days that look wrong. One sentence each;
/// empty where there is nothing to ask. Reads the store: throws store::StoreError.
[[nodiscard]] QStringList questionsBefore(const records::GivenTreatment& entry, Services& services);

} // namespace halfcup::touch
