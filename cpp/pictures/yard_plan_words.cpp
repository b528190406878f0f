// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "pictures/yard_plan.h"

#include "pictures/foot.h"
#include "pictures/plan_shapes.h"
#include "pictures/standing_shape.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

#include <algorithm>
#include <array>
#include <cmath>

namespace halfcup::pictures {

namespace {

class YardPlanWords {
    Q_DECLARE_TR_FUNCTIONS(YardPlanWords)
};

using Standing = std::optional<mites::Standing>;
constexpr std::array<Standing, 5> gravestFirst{mites::Standing::Over, mites::Standing::Close,
                                               mites::Standing::CannotTell, mites::Standing::Under,
                                               std::nullopt};

bool isPlaced(const PlannedHive& hive) {
    return hive.stand && canStand(*hive.stand);
}

QString length(double metres, bool feet) {
    const double figure = std::round(feet ? metres / metresPerFoot : metres);
    return feet ? YardPlanWords::tr("%1 ft", "feet").arg(QLocale().toString(figure, 'f', 0))
                : YardPlanWords::tr("%1 m", "metres").arg(QLocale().toString(figure, 'f', 0));
}

/// "Over the line: 4, 7."
QString listed(Standing standing, const QString& labels) {
    if (!standing)
        return YardPlanWords::tr("Not washed: %1.", "labels of hives").arg(labels);
    switch (*standing) {
    case mites::Standing::Over:
        return YardPlanWords::tr("Over the line: %1.", "labels of hives").arg(labels);
    case mites::Standing::Close:
        return YardPlanWords::tr("Close to the line: %1.", "labels of hives").arg(labels);
    case mites::Standing::CannotTell:
        return YardPlanWords::tr("Can't tell yet: %1.", "labels of hives").arg(labels);
    case mites::Standing::Under:
        break;
    }
    return YardPlanWords::tr("Under the line: %1.", "labels of hives").arg(labels);
}

Drawing hiveKey(bool fromPositions) {
    Drawing key{.size = legendKeySize};
    addHiveSquare(key, QRectF(7, 1, 14, 14), fromPositions, false);
    return key;
}

Drawing standingKey(Standing standing) {
    Drawing key{.size = legendKeySize};
    addStanding(key, standing, QRectF(QPointF(), legendKeySize));
    return key;
}

} // namespace

QString wordOf(Standing standing) {
    if (!standing)
        return YardPlanWords::tr("not washed");
    switch (*standing) {
    case mites::Standing::Over:
        return YardPlanWords::tr("over", "the line");
    case mites::Standing::Close:
        return YardPlanWords::tr("close", "to the line");
    case mites::Standing::CannotTell:
        return YardPlanWords::tr("can't tell");
    case mites::Standing::Under:
        break;
    }
    return YardPlanWords::tr("under", "the line");
}

Legend legendOf(const YardPlan& plan) {
    Legend legend;
    for (const Standing& standing : gravestFirst)
        if (std::ranges::any_of(plan.hives,
                                [&](const PlannedHive& hive) { return hive.standing == standing; })) {
            const QString meaning =
                !standing                             ? wordOf(standing)
                : *standing == mites::Standing::Over  ? YardPlanWords::tr("over the line")
                : *standing == mites::Standing::Close ? YardPlanWords::tr("close to the line")
                : *standing == mites::Standing::Under ? YardPlanWords::tr("under the line")
                                                      : YardPlanWords::tr("can't tell yet");
            legend.push_back({standingKey(standing), meaning});
        }
    const auto placed = [&](bool fromPositions) {
        return std::ranges::any_of(plan.hives, [&](const PlannedHive& hive) {
            return isPlaced(hive) && hive.fromPositions == fromPositions;
        });
    };
    if (placed(true)) { // a plan of one kind by the keeper's own hand needs no words
        if (placed(false))
            legend.push_back({hiveKey(false), YardPlanWords::tr("where you put it")});
        legend.push_back({hiveKey(true), YardPlanWords::tr("from positions of its washes")});
    }
    return legend;
}

QString sentenceOf(const YardPlan& plan) {
    if (plan.hives.empty())
        return YardPlanWords::tr("Plan of the yard: no hive in it yet.");
    QStringList sentences;
    if (const auto ground = groundOf(plan))
        sentences.append(
            YardPlanWords::tr("Plan of the yard, north up: %1 from west to east, %2 from south to "
                              "north.")
                .arg(length(ground->widthM(), plan.feet), length(ground->heightM(), plan.feet)));
    else
        sentences.append(YardPlanWords::tr("Plan of the yard: no hive has its place yet."));
    for (const Standing& standing : gravestFirst) {
        QStringList labels;
        for (const PlannedHive& hive : plan.hives)
            if (hive.standing == standing)
                labels.append(hive.label);
        if (!labels.isEmpty())
            sentences.append(listed(standing, labels.join(QStringLiteral(", "))));
    }
    QStringList others;
    for (const PlannedHive& hive : plan.hives)
        if (!isPlaced(hive))
            others.append(hive.label);
    if (!others.isEmpty() && others.size() < static_cast<qsizetype>(plan.hives.size()))
        sentences.append(YardPlanWords::tr("Not on the plan: %1.", "labels of hives")
                             .arg(others.join(QStringLiteral(", "))));
    return sentences.join(QLatin1Char(' '));
}

} // namespace halfcup::pictures
