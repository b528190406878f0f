// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QColor>
#include <QFont>
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
    // From this height on a page keeps its title and all of its actions in their places; on a lower one only
    // Back, the corner's button and the main action stay, and the rest scrolls.
    Q_PROPERTY(double roomyHeight READ roomyHeight NOTIFY changed)
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
    // Pixel sizes. What is read in sentences grows as the system asks, to twice its size; what is large
    // already grows less, as it does on the phones' own systems, or a title would push out what it is the
    // title of.
    Q_PROPERTY(int titleSize READ titleSize NOTIFY changed)   // 29 to 39
    Q_PROPERTY(int mainSize READ mainSize NOTIFY changed)     // 25 to 35: the words of a main action
    Q_PROPERTY(int buttonSize READ buttonSize NOTIFY changed) // 21 to 34
    Q_PROPERTY(int bodySize READ bodySize NOTIFY changed)     // 17 to 34
    Q_PROPERTY(int smallSize READ smallSize NOTIFY changed)   // 14 to 28

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
    double roomyHeight() const { return 1.35 * (touchHeight() + mainHeight() + 10 * bodySize()); }
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
    /// A font of the pages. Without kerning and ligatures: in Latin letters they are ornament, and reading
    /// the tables they need costs more than all else there is to a word. Scripts that need them keep them.
    QFont fontOf(double pixels, int weight) const;
    int titleSize() const;
    int mainSize() const;
    int buttonSize() const;
    int bodySize() const;
    int smallSize() const;

    /// The largest pixel size, up to the one that is wanted and down to 12, at which the longest word of the
    /// text fits the width (pixels), so that none is broken. Without a width: as wanted. Always whole:
    /// between two whole pixels the lower was drawn on amd64, the upper on arm64.
    Q_INVOKABLE double wordSize(const QString& text, double width, double wanted, int weight) const;

    /// The same for words that wrap and whose lines together are no higher than most (pixels), where 12
    /// allows.
    Q_INVOKABLE double boundedSize(const QString& text, double width, double most, double wanted,
                                   int weight) const;

    /// The largest pixel size, up to the one that is wanted and down to 12, at which a bold number on one
    /// line fits the place (pixels). Its digits count as equally wide, so that the size stays while it
    /// counts.
    Q_INVOKABLE double figureSize(const QString& number, double width, double height, double wanted) const;

    /// WCAG 2.2 contrast ratio of two opaque colours, 1 to 21.
    Q_INVOKABLE static double contrast(const QColor& a, const QColor& b);

signals:
    void changed();

private:
    int grown(double pixels, double share) const; // share of the system's scale that is followed

    double m_pixelsPerMm;
    double m_fontScale;
    bool m_dusk = false;
    bool m_leftHand = false;
    bool m_thickGloves = false;
};

} // namespace halfcup::touch
