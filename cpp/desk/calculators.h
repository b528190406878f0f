// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// The calculators: CSV in, CSV out, one row at a time (verb.h, table.h). --help of each names its columns.
#include "desk/verb.h"

namespace halfcup::desk {

Verb assessVerb();   // the load of each wash, and what it means against a line
Verb outlookVerb();  // growth and the load ahead, from the washes of a colony
Verb efficacyVerb(); // did a treatment work
Verb yardVerb();     // the mean load of a yard
Verb seasonVerb();   // mites through a season

} // namespace halfcup::desk
