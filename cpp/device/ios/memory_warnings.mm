// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "device/ios/memory_warnings.h"

#include <UIKit/UIKit.h>

namespace halfcup::device {

struct MemoryWarnings::Observer {
    id<NSObject> token = nil;
};

MemoryWarnings::MemoryWarnings(QtAppState* state)
    : QObject(state)
    , m_observer(std::make_unique<Observer>()) {
    m_observer->token = [NSNotificationCenter.defaultCenter
        addObserverForName:UIApplicationDidReceiveMemoryWarningNotification
                    object:nil
                     queue:NSOperationQueue.mainQueue
                usingBlock:^(NSNotification*) {
                    state->tellMemoryIsShort();
                }];
}

MemoryWarnings::~MemoryWarnings() {
    [NSNotificationCenter.defaultCenter removeObserver:m_observer->token];
}

} // namespace halfcup::device
