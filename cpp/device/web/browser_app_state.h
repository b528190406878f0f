// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/app_state.h"

namespace halfcup::device {

/// By the page's visibility: hidden while another tab or program is in front, or the glass is dark. A browser
/// ends a hidden page without a word, and tells nothing of memory.
class BrowserAppState final : public AppState {
    Q_OBJECT
public:
    explicit BrowserAppState(QObject* parent = nullptr);
    [[nodiscard]] bool isInFront() const override { return m_inFront; }

private:
    void look();

    bool m_inFront = true;
};

} // namespace halfcup::device
