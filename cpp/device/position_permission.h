// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QObject>

#include <functional>
#include <memory>

namespace halfcup::device {

/// Whether the keeper lets the program know where the phone is. Phones ask their owner, once, at the moment
/// when it is wanted: at the hive, never at the start. GUI thread only.
class PositionPermission {
public:
    virtual ~PositionPermission() = default;
    /// Asks the system, which may ask the keeper; `answer` gets true where positions may be read, and is
    /// called once, from the event loop or before this returns, or never when `context` has gone by then.
    /// Never fails: a system that knows no such question answers true, and says no when it is read.
    virtual void ask(QObject* context, std::function<void(bool allowed)> answer) = 0;
};

/// The system's own. Qt knows the question from 6.5 on; built with an older one, the answer is always true.
[[nodiscard]] std::unique_ptr<PositionPermission> makePositionPermission();

} // namespace halfcup::device
