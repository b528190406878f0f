// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/surroundings.h"

#include <utility>

namespace halfcup::device {

/// A notch and a strip wherever a test wants them.
class FakeWindowInsets final : public WindowInsets {
    Q_OBJECT
public:
    using WindowInsets::WindowInsets;
    void watch(QWindow* window) override { m_window = window; }
    [[nodiscard]] Insets now() const override { return m_insets; }
    void set(const Insets& insets) {
        if (insets == m_insets)
            return;
        m_insets = insets;
        Q_EMIT changed();
    }
    [[nodiscard]] const QWindow* watched() const { return m_window; }

private:
    Insets m_insets;
    QWindow* m_window = nullptr;
};

/// A phone that is put into a pocket, taken out again, and short of memory, as a test says.
class FakeAppState final : public AppState {
    Q_OBJECT
public:
    using AppState::AppState;
    [[nodiscard]] bool isInFront() const override { return m_inFront; }
    void putAway() {
        if (std::exchange(m_inFront, false))
            Q_EMIT wentAway();
    }
    void takeOut() {
        if (!std::exchange(m_inFront, true))
            Q_EMIT cameBack();
    }
    void runShortOfMemory() { Q_EMIT memoryIsShort(); }

private:
    bool m_inFront = true;
};

/// Letters as large as a test wants them.
class FakeTextScale final : public TextScale {
    Q_OBJECT
public:
    using TextScale::TextScale;
    [[nodiscard]] double now() const override { return m_scale; }
    void set(double scale) {
        if (std::exchange(m_scale, scale) != scale)
            Q_EMIT changed();
    }

private:
    double m_scale = 1.0;
};

/// Surroundings made of fakes, with a view of each that stays good wherever they are moved.
struct FakeSurroundings {
    FakeSurroundings()
        : insets(new FakeWindowInsets)
        , state(new FakeAppState)
        , text(new FakeTextScale)
        , surroundings{std::unique_ptr<WindowInsets>(insets), std::unique_ptr<AppState>(state),
                       std::unique_ptr<TextScale>(text)} {}

    FakeWindowInsets* insets;
    FakeAppState* state;
    FakeTextScale* text;
    Surroundings surroundings;
};

} // namespace halfcup::device
