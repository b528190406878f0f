// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/app_state.h"
#include "device/text_scale.h"
#include "device/window_insets.h"

#include <memory>

namespace halfcup::device {

/// What the phone does to the window and to the program, whether it is asked or not. None is ever null.
struct Surroundings {
    std::unique_ptr<WindowInsets> insets;
    std::unique_ptr<AppState> state;
    std::unique_ptr<TextScale> text = std::make_unique<TextScale>();
};

/// Those of the phone or computer this runs on. Needs a QGuiApplication. Never fails.
[[nodiscard]] Surroundings makeSurroundings();

} // namespace halfcup::device
