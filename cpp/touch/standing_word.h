// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "mites/standing.h"

#include <QObject>
#include <QQmlEngine>

#include <optional>

namespace halfcup::touch {

/// What the mark beside a sentence shows: a drop under, on or over a line, a question, or nothing known yet.
class StandingWord : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("only its values are used")
public:
    enum Value { Unknown, Under, Close, Over, CannotTell };
    Q_ENUM(Value)

    static Value from(mites::Standing standing);
    /// The inverse; nothing for Unknown and for a value that is none.
    static std::optional<mites::Standing> standingOf(int value);
};

} // namespace halfcup::touch
