// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// The verbs that work on a keeper's database. --help of each says what comes out.
#include "desk/verb.h"

namespace halfcup::desk {

Verb dueVerb();     // what is due in all yards
Verb choicesVerb(); // which treatment fits a colony
Verb demoVerb();    // loads the demo season
Verb importVerb();  // takes in a table of earlier washes
Verb exportVerb();  // writes tables, a map, a calendar or a report

Verb mergeVerb();  // takes in exchange files
Verb folderVerb(); // exchanges through a folder

Verb backupVerb();  // one checked file
Verb restoreVerb(); // puts it back
Verb rescueVerb();  // reads what can be read of a damaged one
Verb checkVerb();   // checks a database or a backup

} // namespace halfcup::desk
