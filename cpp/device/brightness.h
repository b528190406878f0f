// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <memory>

namespace halfcup::device {

/// Makes the screen as bright as it goes while mites are counted in the sun.
///
/// Bright for as long as at least one Hold lives; then as it was, unless somebody has set it otherwise
/// meanwhile. A phone whose screen cannot be set is no error: the Hold is then empty and works() is false. A
/// program that dies leaves the screen bright until it is set again. Never blocks. GUI thread only.
class Brightness {
public:
    /// Alive = the screen stays bright. May outlive the Brightness it came from.
    class Hold {
    public:
        Hold() = default;
        Hold(const Hold&) = delete;
        Hold& operator=(const Hold&) = delete;
        virtual ~Hold() = default;
    };

    Brightness() = default;
    Brightness(const Brightness&) = delete;
    Brightness& operator=(const Brightness&) = delete;
    virtual ~Brightness() = default;

    /// Never null.
    [[nodiscard]] virtual std::shared_ptr<Hold> raise() = 0;
    /// Whether a Hold has any effect, as far as known now.
    [[nodiscard]] virtual bool works() const = 0;
};

} // namespace halfcup::device
