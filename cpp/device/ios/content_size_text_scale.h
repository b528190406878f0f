// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/text_scale.h"

namespace halfcup::device {

/// What the content size category of iOS makes of letters of 17 points (UIFontMetrics, text style body),
/// looked at when the program comes to the front.
class ContentSizeTextScale final : public TextScale {
    Q_OBJECT
public:
    explicit ContentSizeTextScale(QObject* parent = nullptr);
    [[nodiscard]] double now() const override { return m_scale; }

private:
    void look();

    double m_scale = 1.0;
};

} // namespace halfcup::device
