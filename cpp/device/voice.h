// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QObject>
#include <QString>

namespace halfcup::device {

/// Says short sentences while hands and eyes are busy. A voice only ever adds (the tones remain for a phone
/// without one), so there is no error: without an engine, without a voice for the language, or when off,
/// say() does nothing. Never blocks. GUI thread only.
class Voice : public QObject {
    Q_OBJECT
public:
    using QObject::QObject;
    /// Looks for an engine, which can take seconds. Call after the first frame, and again where the
    /// language is another one; works() is known a moment after it.
    virtual void prepare() = 0;
    /// Says it, in the language of QLocale(), in place of what is still being said: news is never late.
    virtual void say(const QString& sentence) = 0;
    /// The keeper's setting; on to begin with. Off also stops what is being said.
    virtual void setOn(bool on) = 0;
    [[nodiscard]] virtual bool isOn() const = 0;
    /// Whether there is an engine with a voice for QLocale(), as far as known now; does not look at isOn().
    [[nodiscard]] virtual bool works() const = 0;

Q_SIGNALS:
    void worksChanged();
};

} // namespace halfcup::device
