// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "exchange/demo_reader.h"
#include "store/store.h"

#include <QString>

namespace halfcup::touch {

/// The demo's text, compiled into the program.
[[nodiscard]] std::string demoText();

/// Writes the demo's yards, colonies and samples as one transaction. Loading it again changes nothing: its
/// ids are always the same. Throws store::StoreError.
void loadDemo(store::Store& store, const exchange::Demo& demo);

} // namespace halfcup::touch
