// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "measure.h"

#include <QAccessible>
#include <QHash>

#include <algorithm>
#include <cmath>

namespace halfcup::screens {

namespace {

struct LeastMm {
    double main, side, apart;
};
constexpr LeastMm usual{20, 14, 4};
constexpr LeastMm thickGloves{26, 18, 5};
constexpr double leastContrast = 7;
constexpr double slackPx = 0.6; // sizes are laid out on whole and half pixels

bool isMain(const QQuickItem* item) {
    return QLatin1String(item->metaObject()->className()).startsWith(QLatin1String("MainButton_"));
}

// Keys of the number pad and the row under the counting field share the width of the page with others.
bool sharesItsRow(const QQuickItem* item) {
    return item->objectName() == QLatin1String("keyKeep");
}

bool isText(const QQuickItem* item) {
    return item->inherits("QQuickText") && !item->property("text").toString().isEmpty();
}

bool isTouched(const QQuickItem* item) {
    return item->inherits("halfcup::touch::PressArea") || item->inherits("QQuickTextField") ||
           item->objectName() == QLatin1String("countField") ||
           ((item->inherits("QQuickMouseArea") || item->inherits("QQuickMultiPointTouchArea")) &&
            item->objectName() != QLatin1String("backdrop") &&
            item->objectName() != QLatin1String("countTouch"));
}

QRectF sceneRect(const QQuickItem* item) {
    return item->mapRectToScene(QRectF(0, 0, item->width(), item->height()));
}

// Where the glyphs are, not the box they were given.
QRectF textRect(const QQuickItem* item) {
    return item->mapRectToScene(item->boundingRect());
}

QRectF viewport(const QQuickItem* item) {
    QRectF seen(-1e6, -1e6, 2e6, 2e6);
    for (QQuickItem* above = item->parentItem(); above; above = above->parentItem())
        if (above->clip())
            seen = seen.intersected(sceneRect(above));
    return seen;
}

bool scrolls(const QQuickItem* item) {
    for (QQuickItem* above = item->parentItem(); above; above = above->parentItem())
        if (above->inherits("QQuickFlickable"))
            return true;
    return false;
}

QString nameOf(const QQuickItem* item) {
    if (isText(item))
        return QStringLiteral("\"%1\"").arg(item->property("text").toString());
    return item->objectName().isEmpty() ? QString::fromLatin1(item->metaObject()->className())
                                        : item->objectName();
}

template <class Wanted>
QList<QQuickItem*> seen(Stage& stage, Wanted wanted) {
    QList<QQuickItem*> found;
    for (QQuickItem* item : visibleItems(stage.window()->contentItem()))
        if (wanted(item))
            found.append(item);
    return found;
}

double gap(const QRectF& a, const QRectF& b) {
    const double dx = std::max({0.0, a.left() - b.right(), b.left() - a.right()});
    const double dy = std::max({0.0, a.top() - b.bottom(), b.top() - a.bottom()});
    return std::hypot(dx, dy);
}

QRectF page(Stage& stage) {
    return {QPointF(0, 0), QSizeF(stage.window()->size())};
}

const LeastMm& least(Stage& stage) {
    return stage.look().hasThickGloves() ? thickGloves : usual;
}

QStringList smallOnes(Stage& stage, const QQuickItem* item) {
    QStringList wrong;
    const double px = stage.look().pixelsPerMm();
    const LeastMm mm = least(stage);
    const double height = (isMain(item) && !sharesItsRow(item) ? mm.main : mm.side) * px;
    if (item->height() < height - slackPx || item->width() < mm.side * px - slackPx)
        wrong.append(QStringLiteral("%1 is %2 x %3 mm")
                         .arg(nameOf(item))
                         .arg(item->width() / px, 0, 'f', 1)
                         .arg(item->height() / px, 0, 'f', 1));
    const QRectF rect = sceneRect(item);
    const QRectF room = scrolls(item) ? QRectF(0, -1e6, page(stage).width(), 2e6) : page(stage);
    if (!room.adjusted(-slackPx, -slackPx, slackPx, slackPx).contains(rect))
        wrong.append(QStringLiteral("%1 reaches out of the page").arg(nameOf(item)));
    // Under the thumb of the hand that holds the phone: the lower 60 % of the page.
    if (isMain(item) && rect.top() < 0.4 * page(stage).height())
        wrong.append(QStringLiteral("%1 is too high up").arg(nameOf(item)));
    return wrong;
}

QColor groundAround(const QImage& image, const QRect& rect, const QColor& ink) {
    QHash<QRgb, int> counted;
    for (int y = rect.top(); y <= rect.bottom(); ++y)
        for (int x = rect.left(); x <= rect.right(); ++x)
            ++counted[image.pixel(x, y)];
    QColor ground;
    int most = 0;
    for (auto it = counted.cbegin(); it != counted.cend(); ++it)
        if (it.value() > most && touch::Look::contrast(QColor(it.key()), ink) > 1.3) {
            most = it.value();
            ground = QColor(it.key());
        }
    return ground;
}

} // namespace

QStringList wrongSizes(Stage& stage) {
    QStringList wrong;
    const QList<QQuickItem*> touched = seen(stage, isTouched);
    for (qsizetype i = 0; i < touched.size(); ++i) {
        wrong.append(smallOnes(stage, touched[i]));
        for (qsizetype j = i + 1; j < touched.size(); ++j) {
            const QRectF first = sceneRect(touched[i]).intersected(viewport(touched[i]));
            const QRectF second = sceneRect(touched[j]).intersected(viewport(touched[j]));
            if (first.isEmpty() || second.isEmpty())
                continue; // scrolled out of sight
            const double mm = gap(first, second) / stage.look().pixelsPerMm();
            if (mm < least(stage).apart - slackPx / stage.look().pixelsPerMm())
                wrong.append(QStringLiteral("%1 and %2 are %3 mm apart")
                                 .arg(nameOf(touched[i]), nameOf(touched[j]))
                                 .arg(mm, 0, 'f', 1));
        }
    }
    return wrong;
}

QStringList wrongTexts(Stage& stage) {
    QStringList wrong;
    const QList<QQuickItem*> texts = seen(stage, isText);
    const QList<QQuickItem*> touched = seen(stage, isTouched);
    for (qsizetype i = 0; i < texts.size(); ++i) {
        const QQuickItem* text = texts[i];
        const bool cut = text->property("truncated").toBool() ||
                         text->property("contentWidth").toDouble() > text->width() + 1 ||
                         text->property("contentHeight").toDouble() > text->height() + 1;
        if (cut)
            wrong.append(QStringLiteral("%1 is cut: %2 x %3 in %4 x %5")
                             .arg(nameOf(text).right(60))
                             .arg(text->property("contentWidth").toDouble())
                             .arg(text->property("contentHeight").toDouble())
                             .arg(text->width())
                             .arg(text->height()));
        const QRectF rect = textRect(text);
        const QRectF room = scrolls(text) ? QRectF(0, -1e6, page(stage).width(), 2e6) : page(stage);
        if (!room.contains(rect))
            wrong.append(QStringLiteral("%1 reaches out of the page").arg(nameOf(text)));
        const QRectF shown = rect.intersected(viewport(text));
        for (qsizetype j = i + 1; j < texts.size(); ++j) {
            const QRectF both = shown.intersected(textRect(texts[j]).intersected(viewport(texts[j])));
            if (both.width() > 1 && both.height() > 1)
                wrong.append(QStringLiteral("%1 lies over %2").arg(nameOf(text), nameOf(texts[j])));
        }
        for (const QQuickItem* button : touched) {
            const QRectF both = shown.intersected(sceneRect(button).intersected(viewport(button)));
            if (!button->isAncestorOf(text) && both.width() > 1 && both.height() > 1)
                wrong.append(QStringLiteral("%1 lies over %2").arg(nameOf(text), nameOf(button)));
        }
    }
    return wrong;
}

QStringList wrongContrasts(Stage& stage) {
    QStringList wrong;
    const QImage image = stage.picture().convertToFormat(QImage::Format_RGB32);
    const double ratio = image.width() / page(stage).width();
    for (const QQuickItem* text : seen(stage, isText)) {
        const QRectF shown = textRect(text).intersected(viewport(text)).intersected(page(stage));
        const QRect rect =
            QRectF(shown.topLeft() * ratio, shown.size() * ratio).toAlignedRect() & image.rect();
        if (rect.width() < 4 || rect.height() < 8)
            continue; // scrolled out of sight but for an edge
        const QColor ink = text->property("color").value<QColor>();
        const double contrast = touch::Look::contrast(ink, groundAround(image, rect, ink));
        if (contrast < leastContrast)
            wrong.append(
                QStringLiteral("%1 has a contrast of %2").arg(nameOf(text)).arg(contrast, 0, 'f', 1));
    }
    return wrong;
}

QStringList wrongNames(Stage& stage) {
    QStringList wrong;
    for (QQuickItem* item : seen(stage, isTouched)) {
        QAccessibleInterface* spoken = QAccessible::queryAccessibleInterface(item);
        if (!spoken || spoken->text(QAccessible::Name).trimmed().isEmpty())
            wrong.append(QStringLiteral("%1 has no name for a screen reader").arg(nameOf(item)));
        else if (!item->inherits("QQuickTextField") &&
                 (!spoken->actionInterface() || !spoken->actionInterface()->actionNames().contains(
                                                    QAccessibleActionInterface::pressAction())))
            wrong.append(QStringLiteral("%1 cannot be pressed by a screen reader").arg(nameOf(item)));
        if (item->objectName().isEmpty())
            wrong.append(QStringLiteral("%1 has no object name").arg(nameOf(item)));
        if (item->isEnabled() && !item->activeFocusOnTab())
            wrong.append(QStringLiteral("%1 is not reached by Tab").arg(nameOf(item)));
    }
    return wrong;
}

QStringList wrongMainActions(Stage& stage, int expected) {
    const QList<QQuickItem*> mains = seen(stage, isMain);
    if (mains.size() == expected)
        return {};
    return {QStringLiteral("%1 main actions instead of %2").arg(mains.size()).arg(expected)};
}

QStringList whatIsWrong(Stage& stage, const QString& screen, int mainActions) {
    QStringList wrong = wrongSizes(stage) + wrongTexts(stage) + wrongContrasts(stage) + wrongNames(stage) +
                        wrongMainActions(stage, mainActions);
    for (QString& each : wrong)
        each.prepend(screen + QStringLiteral(": "));
    return wrong;
}

} // namespace halfcup::screens
