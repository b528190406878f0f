// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/position_permission.h"
#include "place/position_source.h"

#include <memory>

namespace halfcup::touch {

/// A source that the system lets nobody read without the keeper's leave: asks for it each time it is started,
/// and starts what it holds once there is leave. Without it, it tells Denied and goes on running, silent:
/// positions add to a wash, they are never a condition.
class AskingSource : public place::PositionSource {
    Q_OBJECT
public:
    /// Neither may be null.
    AskingSource(std::unique_ptr<place::PositionSource> source,
                 std::unique_ptr<device::PositionPermission> permission);
    ~AskingSource() override;

    void start() override;
    void stop() override;
    [[nodiscard]] bool isRunning() const override { return m_running; }
    [[nodiscard]] QString name() const override { return m_source->name(); }

private:
    void take(bool allowed);

    std::unique_ptr<place::PositionSource> m_source;
    std::unique_ptr<device::PositionPermission> m_permission;
    bool m_running = false;
    int m_round = 0; // an answer to an earlier start() counts for nothing
};

} // namespace halfcup::touch
