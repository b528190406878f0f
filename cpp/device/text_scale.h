// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QObject>

namespace halfcup::device {

/// How much larger than usual the keeper wants letters, as the system's own settings say. This one is of a
/// system that does not tell. GUI thread only.
class TextScale : public QObject {
    Q_OBJECT
public:
    using QObject::QObject;
    /// 1 as usual, 2 twice as large; below 1 where the keeper wants them smaller. Always finite and above 0.
    [[nodiscard]] virtual double now() const { return 1.0; }

Q_SIGNALS:
    void changed(); // only where now() differs from before
};

} // namespace halfcup::device
