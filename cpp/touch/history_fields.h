// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/fields.h"
#include "touch/services.h"

#include <QString>

#include <string>
#include <vector>

/// What of a record is told under "What changed", and how.
namespace halfcup::touch {

/// One thing a keeper knows of a record: one field, or several that change together.
struct KnownField {
    std::vector<std::string> fields;
    /// Names, labels, notes, places and lines, and whether it is there at all. What was counted or measured,
    /// and days that must keep step with each other, are changed where they were typed, under its checks.
    bool canBePutBack = false;
    bool mayBeEmpty = true; // a name may not
};

/// In the order in which they are told. Kinds that have no page of their own give nothing.
[[nodiscard]] const std::vector<KnownField>& knownFields(records::Kind kind);

/// "Name", "Place", "Treat line".
[[nodiscard]] QString titleOf(const KnownField& known);

/// What it was, as the keeper reads it; "nothing" where it was empty. Reads the store; throws
/// store::StoreError.
[[nodiscard]] QString valueOf(Services& services, records::Kind kind, const KnownField& known,
                              const records::Fields& values);

} // namespace halfcup::touch
