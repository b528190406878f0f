// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "season/choices.h"

#include <QColor>
#include <QQmlEngine>
#include <QQuickPaintedItem>

namespace halfcup::touch {

/// The mark beside a verdict: an open hive entrance for what fits, one half closed for what wants care, one
/// that is barred for what does not fit now. Told apart by shape; the fill only repeats it.
class VerdictMark : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int verdict READ verdict WRITE setVerdict NOTIFY changed) // a Value
    Q_PROPERTY(QColor inkColor READ inkColor WRITE setInkColor NOTIFY changed)
    Q_PROPERTY(QColor careColor READ careColor WRITE setCareColor NOTIFY changed)
    Q_PROPERTY(QColor barColor READ barColor WRITE setBarColor NOTIFY changed)
public:
    enum Value { Unknown, Fits, WithCare, NotNow };
    Q_ENUM(Value)

    explicit VerdictMark(QQuickItem* parent = nullptr);

    static Value from(season::Verdict verdict);
    /// "Fits", "Fits with care", "Not now": always these words.
    static QString word(season::Verdict verdict);

    int verdict() const { return m_verdict; }
    void setVerdict(int verdict); // a value that is none shows nothing
    QColor inkColor() const { return m_inkColor; }
    void setInkColor(const QColor& color);
    QColor careColor() const { return m_careColor; }
    void setCareColor(const QColor& color);
    QColor barColor() const { return m_barColor; }
    void setBarColor(const QColor& color);

    void paint(QPainter* painter) override;

signals:
    void changed();

private:
    template <class T>
    void set(T& member, const T& value);

    int m_verdict = Unknown;
    QColor m_inkColor = Qt::black;
    QColor m_careColor = Qt::black;
    QColor m_barColor = Qt::black;
};

} // namespace halfcup::touch
