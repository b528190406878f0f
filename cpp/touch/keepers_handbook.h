// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "handbook/handbook.h"

#include <optional>

namespace halfcup::touch {

/// The handbook in the keeper's language (see languages.h). Read when it is first asked for, because the
/// first page shows nothing of it. GUI thread only.
class KeepersHandbook {
public:
    /// Throws handbook::HandbookError where what is compiled in is wrong: tests see to it.
    [[nodiscard]] const handbook::Handbook& read() const;

private:
    mutable std::optional<handbook::Handbook> m_read;
};

} // namespace halfcup::touch
