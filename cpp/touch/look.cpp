// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/look.h"

#include <QFontDatabase>
#include <QFontMetricsF>
#include <QGuiApplication>
#include <QTextLayout>

#include <algorithm>
#include <cmath>

namespace halfcup::touch {

namespace {

Look* theLook = nullptr; // set once where the program is put together

constexpr double leastLetters = 12; // smaller is not read at arm's length: then a word is broken

/// One channel's share in the relative luminance, WCAG 2.2 definition (sRGB).
double linear(double channel) {
    return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

double luminance(const QColor& color) {
    return 0.2126 * linear(color.redF()) + 0.7152 * linear(color.greenF()) + 0.0722 * linear(color.blueF());
}

/// Of a text that wraps as those of the pages do.
double heightOf(const QString& text, double width, const QFont& font) {
    QTextLayout layout(text, font);
    QTextOption option;
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    layout.setTextOption(option);
    double height = 0;
    layout.beginLayout();
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(width);
        height += line.height();
    }
    layout.endLayout();
    return height;
}

} // namespace

Look::Look(double pixelsPerMm, double fontScale, QObject* parent)
    : QObject(parent)
    , m_pixelsPerMm(pixelsPerMm)
    , m_fontScale(fontScale) {}

Look* Look::create(QQmlEngine*, QJSEngine*) {
    Q_ASSERT(theLook);
    QQmlEngine::setObjectOwnership(theLook, QQmlEngine::CppOwnership);
    return theLook;
}

void Look::setInstance(Look* look) {
    theLook = look;
}

void Look::setDusk(bool dusk) {
    if (m_dusk == dusk)
        return;
    m_dusk = dusk;
    emit changed();
}

void Look::setThickGloves(bool thick) {
    if (m_thickGloves == thick)
        return;
    m_thickGloves = thick;
    emit changed();
}

void Look::setFontScale(double scale) {
    const double within = std::clamp(scale, 1.0, 2.0);
    if (m_fontScale == within)
        return;
    m_fontScale = within;
    emit changed();
}

void Look::setLeftHand(bool left) {
    if (m_leftHand == left)
        return;
    m_leftHand = left;
    emit changed();
}

QColor Look::page() const {
    return m_dusk ? QColor(0x10, 0x12, 0x14) : QColor(Qt::white);
}
QColor Look::ink() const {
    return m_dusk ? QColor(0xF2, 0xF0, 0xEA) : QColor(Qt::black);
}
QColor Look::quietInk() const {
    return m_dusk ? QColor(0xBF, 0xBD, 0xB8) : QColor(0x46, 0x46, 0x46);
}
QColor Look::line() const {
    return m_dusk ? QColor(0x4A, 0x4E, 0x52) : QColor(0xC9, 0xC6, 0xC0);
}
QColor Look::action() const {
    return m_dusk ? QColor(0x8C, 0xCB, 0xF0) : QColor(0x00, 0x52, 0x7F);
}
QColor Look::actionInk() const {
    return m_dusk ? QColor(Qt::black) : QColor(Qt::white);
}
QColor Look::pressed() const {
    return m_dusk ? QColor(0xB9, 0xE0, 0xF7) : QColor(0x00, 0x3A, 0x5B);
}
QColor Look::field() const {
    return m_dusk ? QColor(0x1D, 0x20, 0x23) : QColor(0xF4, 0xF2, 0xED);
}
QColor Look::honey() const {
    return QColor(0xE6, 0x9F, 0x00);
}
QColor Look::rust() const {
    return m_dusk ? QColor(0xE8, 0x8A, 0x4A) : QColor(0x8A, 0x33, 0x06);
}

QString Look::fontFamily() const {
    static const QString family = [] {
        const QString wanted = QStringLiteral("Inter");
        return QFontDatabase::families().contains(wanted) ? wanted : QGuiApplication::font().family();
    }();
    return family;
}

int Look::titleSize() const {
    return grown(29, 0.35);
}
int Look::mainSize() const {
    return grown(25, 0.4);
}
int Look::buttonSize() const {
    return grown(21, 0.62);
}
int Look::bodySize() const {
    return grown(17, 1);
}
int Look::smallSize() const {
    return grown(14, 1);
}

int Look::grown(double pixels, double share) const {
    return static_cast<int>(std::lround(pixels * (1 + (m_fontScale - 1) * share)));
}

QFont Look::fontOf(double pixels, int weight) const {
    QFont font(fontFamily());
    font.setPixelSize(static_cast<int>(pixels));
    font.setWeight(static_cast<QFont::Weight>(weight));
    font.setStyleStrategy(static_cast<QFont::StyleStrategy>(QFont::PreferDefault | QFont::PreferNoShaping));
    return font;
}

double Look::wordSize(const QString& text, double width, double wanted, int weight) const {
    const double largest =
        std::floor(wanted); // measured as it is shown: each size more is another font to load
    if (width <= 0 || largest <= leastLetters)
        return largest;
    const QFontMetricsF metrics(fontOf(largest, weight));
    double longest = 0;
    for (const QString& word : text.split(QLatin1Char(' '), Qt::SkipEmptyParts))
        longest = std::max(longest, metrics.horizontalAdvance(word));
    // One pixel less: letters are placed on whole pixels.
    return longest <= width - 1 ? largest
                                : std::max(leastLetters, std::floor(largest * (width - 1) / longest));
}

double Look::boundedSize(const QString& text, double width, double most, double wanted, int weight) const {
    double size = wordSize(text, width, wanted, weight);
    while (width > 0 && size > leastLetters && heightOf(text, width, fontOf(size, weight)) > most)
        size -= 1;
    return size;
}

double Look::figureSize(const QString& number, double width, double height, double wanted) const {
    constexpr int measuredAt = 100;
    const QFontMetricsF metrics(fontOf(measuredAt, QFont::Bold));
    QString widest = number;
    for (QChar& each : widest)
        if (each.isDigit())
            each = u'0';
    // Letters are placed on whole pixels, and so are the line's top and bottom.
    const double across = width - 0.5 * static_cast<double>(widest.size()) - 1;
    const double byWidth = measuredAt * across / std::max(1.0, metrics.horizontalAdvance(widest));
    const double byHeight = measuredAt * (height - 2) / metrics.height();
    return std::max(leastLetters, std::floor(std::min({byWidth, byHeight, wanted})));
}

double Look::contrast(const QColor& a, const QColor& b) {
    const double first = luminance(a);
    const double second = luminance(b);
    return (std::max(first, second) + 0.05) / (std::min(first, second) + 0.05);
}

} // namespace halfcup::touch
