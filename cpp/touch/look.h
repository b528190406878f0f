// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QColor>
#include <QObject>
#include <QQmlEngine>

namespace halfcup::touch {

/// Sizes and colours, the only place they are written. Lengths are device-independent pixels made from
/// millimetres at the phone's true dots per inch: a gloved finger has the same size on every glass.
///
/// Sources: keys of at least 19 mm for mittens, MIL-STD-1472E; contrast 7:1, WCAG 2.2 success
/// criterion 1.4.6.
class Look : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON

    Q_PROPERTY(double pixelsPerMm READ pixelsPerMm NOTIFY changed)
    // Main action, anything else that is touched, and what lies between two targets: 20, 14 and 4 mm; for
    // thick gloves 26, 18 and 5 mm.
    Q_PROPERTY(double mainHeight READ mainHeight NOTIFY changed)
    Q_PROPERTY(double touchHeight READ touchHeight NOTIFY changed)
    Q_PROPERTY(double gap READ gap NOTIFY changed)
    Q_PROPERTY(double margin READ margin NOTIFY changed) // page margin
    Q_PROPERTY(double corner READ corner CONSTANT)
    Q_PROPERTY(double hairline READ hairline CONSTANT)
    Q_PROPERTY(bool dusk READ isDusk WRITE setDusk NOTIFY changed)
    Q_PROPERTY(bool thickGloves READ hasThickGloves WRITE setThickGloves NOTIFY changed)
    Q_PROPERTY(double fontScale READ fontScale WRITE setFontScale NOTIFY changed) // 1 to 2
    Q_PROPERTY(bool leftHand READ isLeftHand WRITE setLeftHand NOTIFY changed)

    // Each pair that text stands in has a contrast of at least 7:1 in both themes; a test measures it.
    Q_PROPERTY(QColor page READ page NOTIFY changed)         // behind everything
    Q_PROPERTY(QColor ink READ ink NOTIFY changed)           // text on page and field
    Q_PROPERTY(QColor quietInk READ quietInk NOTIFY changed) // second text on page and field
    Q_PROPERTY(QColor line READ line NOTIFY changed)     // rules, empty cells, the rest of the ring: no text
    Q_PROPERTY(QColor action READ action NOTIFY changed) // main buttons, links, the ring
    Q_PROPERTY(QColor actionInk READ actionInk NOTIFY changed) // text on action
    Q_PROPERTY(QColor pressed READ pressed NOTIFY changed)     // action under the finger
    Q_PROPERTY(QColor field READ field NOTIFY changed)         // the counting field, text boxes
    Q_PROPERTY(QColor honey READ honey NOTIFY changed)         // second channel only, never alone
    Q_PROPERTY(QColor rust READ rust NOTIFY changed)           // second channel only, never alone

    Q_PROPERTY(QString fontFamily READ fontFamily CONSTANT)
    Q_PROPERTY(int titleSize READ titleSize NOTIFY changed) // pixel sizes, at font scale 1: 30 17 14 20
    Q_PROPERTY(int bodySize READ bodySize NOTIFY changed)
    Q_PROPERTY(int smallSize READ smallSize NOTIFY changed)
    Q_PROPERTY(int buttonSize READ buttonSize NOTIFY changed)

public:
    /// pixelsPerMm: device-independent pixels in a millimetre of this screen. fontScale: the system's, 1
    /// to 2.
    explicit Look(double pixelsPerMm, double fontScale = 1.0, QObject* parent = nullptr);

    /// The engine's one Look is made where the program is put together, before the first page is loaded.
    static Look* create(QQmlEngine*, QJSEngine*);
    static void setInstance(Look* look);

    double pixelsPerMm() const { return m_pixelsPerMm; }
    double mainHeight() const { return (m_thickGloves ? 26 : 20) * m_pixelsPerMm; }
    double touchHeight() const { return (m_thickGloves ? 18 : 14) * m_pixelsPerMm; }
    double gap() const { return (m_thickGloves ? 5 : 4) * m_pixelsPerMm; }
    double margin() const { return 2.5 * m_pixelsPerMm; }
    double corner() const { return 12; }
    double hairline() const { return 2; }
    bool isDusk() const { return m_dusk; }
    void setDusk(bool dusk);
    bool hasThickGloves() const { return m_thickGloves; }
    void setThickGloves(bool thick);
    double fontScale() const { return m_fontScale; }
    void setFontScale(double scale); // what is out of range becomes the nearest that is in it
    bool isLeftHand() const { return m_leftHand; }
    void setLeftHand(bool left);

    QColor page() const;
    QColor ink() const;
    QColor quietInk() const;
    QColor line() const;
    QColor action() const;
    QColor actionInk() const;
    QColor pressed() const;
    QColor field() const;
    QColor honey() const;
    QColor rust() const;

    QString fontFamily() const;
    int titleSize() const;
    int bodySize() const;
    int smallSize() const;
    int buttonSize() const;

    /// WCAG 2.2 contrast ratio of two opaque colours, 1 to 21.
    Q_INVOKABLE static double contrast(const QColor& a, const QColor& b);

signals:
    void changed();

private:
    double m_pixelsPerMm;
    double m_fontScale;
    bool m_dusk = false;
    bool m_leftHand = false;
    bool m_thickGloves = false;
};

} // namespace halfcup::touch
