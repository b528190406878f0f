// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "device/ios/idle_timer_keep_awake.h"

#include <UIKit/UIKit.h>

#include <utility>

namespace halfcup::device {

class IdleTimerKeepAwake::CountedHold final : public KeepAwake::Hold {
public:
    explicit CountedHold(std::shared_ptr<int> holds)
        : m_holds(std::move(holds)) {
        if (++*m_holds == 1)
            UIApplication.sharedApplication.idleTimerDisabled = YES;
    }
    ~CountedHold() override {
        if (--*m_holds == 0)
            UIApplication.sharedApplication.idleTimerDisabled = NO;
    }

private:
    std::shared_ptr<int> m_holds;
};

IdleTimerKeepAwake::IdleTimerKeepAwake(QObject* parent)
    : KeepAwake(parent)
    , m_holds(std::make_shared<int>(0)) {}

// iOS has no list of who keeps the screen on, so nobody is told the reason.
std::unique_ptr<KeepAwake::Hold> IdleTimerKeepAwake::hold(const QString&) {
    return std::make_unique<CountedHold>(m_holds);
}

} // namespace halfcup::device
