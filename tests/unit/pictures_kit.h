// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "pictures/drawing.h"
#include "pictures/legend.h"
#include "pictures/painter.h"

#include <QDir>
#include <QImage>
#include <QPainter>
#include <QStringList>

#include <array>
#include <cmath>

/// What every picture is held against, without pixels where that is enough.
namespace halfcup::picturetest {

using namespace halfcup::pictures;

/// As the app's letters are on a phone: body 17, small 14 (touch/look.h).
inline Type phoneType(double scale = 1) {
    return Type(QStringLiteral("Inter"), 17 * scale, 14 * scale);
}

/// Words that overlap, are cut off by the edge, or have less room than they take.
inline QStringList wrongLabels(const Drawing& drawing, const Type& type) {
    constexpr double slack = 0.01;
    QStringList wrong;
    const std::vector<Label> labels = drawing.labels();
    const QRectF all(QPointF(), drawing.size);
    for (std::size_t i = 0; i < labels.size(); ++i) {
        const Label& label = labels[i];
        if (label.text.isEmpty())
            continue;
        if (!all.adjusted(-slack, -slack, slack, slack).contains(label.box))
            wrong.append(QStringLiteral("\"%1\" is cut off by the edge").arg(label.text));
        if (type.width(label.text, label.size) > label.box.width() + slack ||
            label.box.height() + slack < type.height(label.size) * 0.9)
            wrong.append(QStringLiteral("\"%1\" has less room than it takes").arg(label.text));
        for (std::size_t k = 0; k < i; ++k)
            if (!labels[k].text.isEmpty() &&
                labels[k].box.adjusted(slack, slack, -slack, -slack).intersects(label.box))
                wrong.append(QStringLiteral("\"%1\" lies on \"%2\"").arg(label.text, labels[k].text));
    }
    return wrong;
}

/// Whether any shape reaches out of the picture or has a place that is no number.
inline QStringList wrongShapes(const Drawing& drawing) {
    constexpr double slack = 4; // half of the thickest line
    QStringList wrong;
    const QRectF all = QRectF(QPointF(), drawing.size).adjusted(-slack, -slack, slack, slack);
    for (const auto& thing : drawing.things) {
        const auto* shape = std::get_if<Shape>(&thing);
        if (!shape || shape->path.isEmpty())
            continue;
        QRectF bounds = shape->path.controlPointRect();
        if (!std::isfinite(bounds.left() + bounds.right() + bounds.top() + bounds.bottom()))
            wrong.append(QStringLiteral("a shape has a place that is no number"));
        if (shape->in && (bounds &= *shape->in).isEmpty())
            continue; // cut away, all of it
        if (!all.contains(bounds.topLeft()) || !all.contains(bounds.bottomRight()))
            wrong.append(QStringLiteral("a shape reaches out of the picture: %1 %2 %3 %4")
                             .arg(bounds.left())
                             .arg(bounds.top())
                             .arg(bounds.right())
                             .arg(bounds.bottom()));
    }
    return wrong;
}

inline QImage imageOf(const Drawing& drawing, const Palette& palette, const Type& type, double scale = 1) {
    const QSizeF size = drawing.size * scale;
    QImage image(static_cast<int>(std::ceil(size.width())), static_cast<int>(std::ceil(size.height())),
                 QImage::Format_RGB32);
    image.fill(palette.of(Tone::Page));
    QPainter painter(&image);
    painter.scale(scale, scale);
    paint(painter, drawing, palette, type);
    return image;
}

/// Written where HALFCUP_PICTURES says, for people to look at.
inline void keep(const Drawing& drawing, const Palette& palette, const Type& type, const QString& name) {
    const QString folder = qEnvironmentVariable("HALFCUP_PICTURES");
    if (!folder.isEmpty())
        imageOf(drawing, palette, type, 2).save(QDir(folder).filePath(name + QStringLiteral(".png")));
}

/// How a colour looks to eyes without one kind of cone, and in grey. Matrices for severity 1.0, in linear
/// RGB, of Machado, Oliveira and Fernandes, "A Physiologically-based Model for Simulation of Color Vision
/// Deficiency", IEEE Transactions on Visualization and Computer Graphics 15 (2009), table 1; typed from
/// memory and checked by each row summing to 1. Grey: luminance of WCAG 2.2.
inline constexpr std::array eyes{
    std::array{1.0, 0.0, 0.0, 0.0, 1.0, 0.0, 0.0, 0.0, 1.0}, // all cones
    std::array{0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998},
    std::array{0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940, 0.968881},
    std::array{1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.303900},
    std::array{0.2126, 0.7152, 0.0722, 0.2126, 0.7152, 0.0722, 0.2126, 0.7152, 0.0722}};
inline constexpr std::array eyeNames{"all cones", "no red cones", "no green cones", "no blue cones", "grey"};

inline QImage seenBy(const QImage& image, const std::array<double, 9>& eye) {
    const auto linear = [](double c) {
        return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
    };
    const auto shown = [](double c) {
        const double within = std::clamp(c, 0.0, 1.0);
        return static_cast<int>(std::lround(
            255 * (within <= 0.0031308 ? within * 12.92 : 1.055 * std::pow(within, 1 / 2.4) - 0.055)));
    };
    QImage seen(image.size(), QImage::Format_RGB32);
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x) {
            const QColor color = image.pixelColor(x, y);
            const double r = linear(color.redF()), g = linear(color.greenF()), b = linear(color.blueF());
            seen.setPixelColor(x, y,
                               QColor(shown(eye[0] * r + eye[1] * g + eye[2] * b),
                                      shown(eye[3] * r + eye[4] * g + eye[5] * b),
                                      shown(eye[6] * r + eye[7] * g + eye[8] * b)));
        }
    return seen;
}

/// Share of the pixels of two keys that clearly differ (a quarter of the way from black to white in some
/// channel).
inline double unlikeness(const QImage& a, const QImage& b) {
    int unlike = 0;
    for (int y = 0; y < a.height(); ++y)
        for (int x = 0; x < a.width(); ++x) {
            const QColor p = a.pixelColor(x, y), q = b.pixelColor(x, y);
            if (std::max({std::abs(p.red() - q.red()), std::abs(p.green() - q.green()),
                          std::abs(p.blue() - q.blue())}) > 64)
                ++unlike;
        }
    return static_cast<double>(unlike) / (a.width() * a.height());
}

/// Keys of a legend that some eyes would take for each other, in the given palette.
inline QStringList alikeKeys(const Legend& legend, const Palette& palette, const Type& type) {
    constexpr double least = 0.02; // of the pixels of a key
    QStringList wrong;
    for (std::size_t eye = 0; eye < eyes.size(); ++eye) {
        std::vector<QImage> keys;
        for (const LegendEntry& entry : legend)
            keys.push_back(seenBy(imageOf(entry.key, palette, type), eyes[eye]));
        for (std::size_t i = 0; i < keys.size(); ++i)
            for (std::size_t k = 0; k < i; ++k)
                if (unlikeness(keys[i], keys[k]) < least)
                    wrong.append(
                        QStringLiteral("%1: \"%2\" looks like \"%3\"")
                            .arg(QLatin1String(eyeNames[eye]), legend[i].meaning, legend[k].meaning));
    }
    return wrong;
}

} // namespace halfcup::picturetest
