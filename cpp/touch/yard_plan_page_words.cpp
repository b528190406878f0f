// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/yard_plan_controller.h"

#include <QLocale>

#include <algorithm>
#include <cmath>

// What the page of a yard's plan says.
namespace halfcup::touch {

QString YardPlanController::length(double metres) const {
    const double figure = std::round(std::abs(m_read.plan.feet ? metres / metresPerFoot : metres) * 10) / 10;
    const QString text = QLocale().toString(figure, 'g', 6);
    return m_read.plan.feet ? tr("%1 ft", "feet").arg(text) : tr("%1 m", "metres").arg(text);
}

QString YardPlanController::line() const {
    const pictures::PlannedHive* hive = picked();
    if (!hasHives())
        return {};
    if (!m_moving)
        return hive ? QString() : tr("Touch a hive to see how it stands.");
    if (hive)
        return tr("Touch where colony %1 stands.").arg(hive->label);
    const auto& hives = m_read.plan.hives;
    const auto moved = std::ranges::find(hives, m_moved, &pictures::PlannedHive::key);
    if (m_moved.isEmpty() || moved == hives.end())
        return tr("Touch a hive, then touch where it stands.");
    return moved->stand ? tr("Colony %1 has its place. Touch the next hive.").arg(moved->label)
                        : tr("Colony %1 has no place now. Touch the next hive.").arg(moved->label);
}

QString YardPlanController::mainAction() const {
    const pictures::PlannedHive* hive = picked();
    return !m_moving && hive ? tr("Colony %1").arg(hive->label) : tr("Done");
}

QString YardPlanController::mainDetail() const {
    const int index = indexOfPicked();
    if (m_moving || m_picked.isEmpty() || index < 0)
        return {};
    const ColonyListModel::Entry& entry = m_read.entries[index];
    return entry.loadLine.isEmpty()
               ? entry.headline
               : tr("%1, %2", "standing, load and its day").arg(entry.headline, entry.loadLine);
}

QString YardPlanController::stepTitle() const {
    const pictures::PlannedHive* hive = picked();
    return hive ? tr("Move colony %1").arg(hive->label) : QString();
}

QString YardPlanController::standLine() const {
    const pictures::PlannedHive* hive = picked();
    if (!hive)
        return {};
    if (!hive->stand || !pictures::canStand(*hive->stand))
        return tr("It has no place on the plan yet. The first step starts from the middle.");
    const auto [eastM, northM] = *hive->stand;
    const QString across = length(eastM);
    const QString upright = length(northM);
    QString where;
    if (northM >= 0)
        where = eastM >= 0 ? tr("It stands %1 east and %2 north of the yard's middle.").arg(across, upright)
                           : tr("It stands %1 west and %2 north of the yard's middle.").arg(across, upright);
    else
        where = eastM >= 0 ? tr("It stands %1 east and %2 south of the yard's middle.").arg(across, upright)
                           : tr("It stands %1 west and %2 south of the yard's middle.").arg(across, upright);
    if (!hive->fromPositions)
        return where;
    const auto stand = std::ranges::find(m_read.stands, m_picked.toStdString(), &place::HiveStand::colonyId);
    if (stand == m_read.stands.end())
        return where;
    return tr("%1 That is where it was washed, within %2.", "where a hive stands, how sure")
        .arg(where, length(std::ceil(stand->accuracyM)));
}

QString YardPlanController::stepLength() const {
    return m_read.plan.feet ? tr("%1 ft", "feet").arg(3) : tr("%1 m", "metres").arg(1);
}

QString YardPlanController::northStep() const {
    return tr("%1 north", "a step").arg(stepLength());
}
QString YardPlanController::southStep() const {
    return tr("%1 south", "a step").arg(stepLength());
}
QString YardPlanController::westStep() const {
    return tr("%1 west", "a step").arg(stepLength());
}
QString YardPlanController::eastStep() const {
    return tr("%1 east", "a step").arg(stepLength());
}

} // namespace halfcup::touch
