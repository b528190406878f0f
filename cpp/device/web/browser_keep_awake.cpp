// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "device/web/browser_keep_awake.h"

#include "device/web/browser.h"

namespace halfcup::device {

namespace {

int g_holds = 0;

class LockHold final : public KeepAwake::Hold {
public:
    LockHold() {
        if (++g_holds == 1)
            halfcupWantWakeLock(1);
    }
    ~LockHold() override {
        if (--g_holds == 0)
            halfcupWantWakeLock(0);
    }
};

} // namespace

std::unique_ptr<KeepAwake::Hold> BrowserKeepAwake::hold(const QString&) {
    return std::make_unique<LockHold>();
}

bool BrowserKeepAwake::works() const {
    return halfcupHasWakeLock() != 0;
}

} // namespace halfcup::device
