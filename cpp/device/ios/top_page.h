// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <UIKit/UIKit.h>

namespace halfcup::device {

/// What a sheet of the system is shown over: the topmost page of the window in front; nil while there is
/// none.
UIViewController* topPage();

} // namespace halfcup::device
