// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "device/ios/top_page.h"

namespace halfcup::device {

UIViewController* topPage() {
    for (UIScene* scene in UIApplication.sharedApplication.connectedScenes) {
        if (![scene isKindOfClass:[UIWindowScene class]])
            continue;
        for (UIWindow* window in static_cast<UIWindowScene*>(scene).windows) {
            if (!window.isKeyWindow)
                continue;
            UIViewController* page = window.rootViewController;
            while (page.presentedViewController != nil)
                page = page.presentedViewController;
            return page;
        }
    }
    return nil;
}

} // namespace halfcup::device
