// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/yard_plan_controller.h"

#include <QLocale>

#include <algorithm>
#include <cmath>

namespace halfcup::touch {

namespace {

using pictures::PlanBounds;
using records::Stand;

constexpr double emptyGroundM = 10;  // to each side of the middle, where no hive has a place [convention]
constexpr double leastAroundM = 4;   // ground around the hives while they are moved [convention]
constexpr double aroundShare = 0.25; // and by how far they reach

PlanBounds roomAround(const std::optional<PlanBounds>& hives) {
    if (!hives)
        return PlanBounds{}.grown(emptyGroundM);
    const double across = std::max(hives->widthM(), hives->heightM());
    return hives->grown(std::max(leastAroundM, across * aroundShare));
}

double toCentimetre(double metres) {
    return std::round(metres * 100) / 100;
}

} // namespace

YardPlanController::YardPlanController(Services& services, QObject* parent)
    : QObject(parent)
    , m_services(services) {}

bool YardPlanController::show(const QString& yardId) {
    std::optional<records::Yard> yard;
    m_services.kept([&] { yard = m_services.store.yard(yardId.toStdString()); });
    if (!yard)
        return false;
    m_yard = *yard;
    m_moving = false;
    m_ground.reset();
    m_picked.clear();
    m_moved.clear();
    refresh();
    return true;
}

void YardPlanController::refresh() {
    if (m_yard.id.empty())
        return;
    read();
    emit changed();
}

void YardPlanController::read() {
    m_services.kept([&] {
        if (const auto yard = m_services.store.yard(m_yard.id))
            m_yard = *yard;
        m_read = yardPlanRecords(m_services, m_yard);
    });
    m_read.plan.ground = m_ground;
    m_read.plan.picked = m_picked;
}

void YardPlanController::startMoving() {
    m_moving = true;
    m_moved.clear();
    m_ground = roomAround(pictures::groundOf(m_read.plan));
    m_read.plan.ground = m_ground;
    pick({});
}

void YardPlanController::stopMoving() {
    m_moving = false;
    m_moved.clear();
    m_ground.reset();
    m_read.plan.ground.reset();
    pick({});
}

void YardPlanController::act() {
    if (m_moving)
        stopMoving();
    else if (picked())
        emit colonyWanted(m_picked);
    else
        emit left();
}

void YardPlanController::back() {
    if (m_moving)
        stopMoving();
    else
        emit left();
}

void YardPlanController::pick(const QString& key) {
    m_picked = key;
    m_read.plan.picked = key;
    emit changed();
}

void YardPlanController::touched(const QString& key, bool onGround, double eastM, double northM) {
    if (!m_moving || !picked() || !onGround) {
        pick(key == m_picked ? QString() : key);
        return;
    }
    if (key == m_picked) { // let go where it is
        pick({});
        return;
    }
    const QString moved = m_picked;
    m_picked.clear();
    keep(moved, Stand{eastM, northM});
}

void YardPlanController::keep(const QString& key, std::optional<Stand> stand) {
    if (stand)
        stand = Stand{toCentimetre(stand->eastM), toCentimetre(stand->northM)};
    if (stand && !pictures::canStand(*stand))
        return;
    const bool kept = m_services.kept([&] {
        auto colony = m_services.store.colony(key.toStdString());
        if (!colony)
            return;
        colony->stand = stand;
        m_services.store.save(*colony);
    });
    if (kept) {
        m_moved = key;
        if (stand)
            widenFor(*stand);
    }
    refresh();
}

/// The plan stays as it is under the finger unless the hive stands at its edge.
void YardPlanController::widenFor(const Stand& stand) {
    if (!m_ground || m_ground->grown(-leastAroundM / 2).holds(stand))
        return;
    m_ground->include({stand.eastM - leastAroundM, stand.northM - leastAroundM});
    m_ground->include({stand.eastM + leastAroundM, stand.northM + leastAroundM});
}

void YardPlanController::startSteps() {
    if (picked() || !hasHives())
        return;
    m_picked = m_moved;
    pick(picked() ? m_moved : m_read.plan.hives.front().key);
}

void YardPlanController::step(Direction direction) {
    const pictures::PlannedHive* hive = picked();
    if (!hive)
        return;
    Stand stand{};
    if (hive->stand && pictures::canStand(*hive->stand))
        stand = *hive->stand;
    else if (m_ground)
        stand = {(m_ground->westM + m_ground->eastM) / 2, (m_ground->southM + m_ground->northM) / 2};
    stand.eastM += direction == East ? stepM() : direction == West ? -stepM() : 0;
    stand.northM += direction == North ? stepM() : direction == South ? -stepM() : 0;
    keep(hive->key, stand);
}

void YardPlanController::takeOff() {
    if (canTakeOff())
        keep(m_picked, std::nullopt);
}

void YardPlanController::pickNext() {
    pickBeside(1);
}

void YardPlanController::pickPrevious() {
    pickBeside(-1);
}

void YardPlanController::pickBeside(int by) {
    const int count = static_cast<int>(m_read.plan.hives.size());
    if (count == 0)
        return;
    const int next = (std::max(indexOfPicked(), 0) + by + count) % count;
    pick(m_read.plan.hives[static_cast<std::size_t>(next)].key);
}

int YardPlanController::indexOfPicked() const {
    const auto& hives = m_read.plan.hives;
    const auto found = std::ranges::find(hives, m_picked, &pictures::PlannedHive::key);
    return found == hives.end() ? -1 : static_cast<int>(found - hives.begin());
}

const pictures::PlannedHive* YardPlanController::picked() const {
    const int index = m_picked.isEmpty() ? -1 : indexOfPicked();
    return index < 0 ? nullptr : &m_read.plan.hives[static_cast<std::size_t>(index)];
}

bool YardPlanController::canTakeOff() const {
    const pictures::PlannedHive* hive = picked();
    return hive && hive->stand && !hive->fromPositions;
}

double YardPlanController::stepM() const {
    return m_read.plan.feet ? 3 * metresPerFoot : 1;
}

} // namespace halfcup::touch
