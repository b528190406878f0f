// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/keep_awake.h"

#include <QStringList>

namespace halfcup::device {

/// Counts holds. A test asks for isHeld() during a step and for released() == acquired() after it.
class FakeKeepAwake final : public KeepAwake {
    Q_OBJECT
public:
    explicit FakeKeepAwake(QObject* parent = nullptr);
    [[nodiscard]] std::unique_ptr<Hold> hold(const QString& reason) override;
    [[nodiscard]] bool works() const override { return m_works; }
    void setWorks(bool works);

    [[nodiscard]] int acquired() const { return m_counts->acquired; }
    [[nodiscard]] int released() const { return m_counts->released; }
    [[nodiscard]] bool isHeld() const { return acquired() > released(); }
    /// The reason of each hold, in order.
    [[nodiscard]] QStringList reasons() const { return m_reasons; }

private:
    struct Counts {
        int acquired = 0;
        int released = 0;
    };
    class CountedHold;

    std::shared_ptr<Counts> m_counts; // shared: a Hold may outlive this
    QStringList m_reasons;
    bool m_works = true;
};

} // namespace halfcup::device
