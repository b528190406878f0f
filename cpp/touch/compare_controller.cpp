// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/compare_controller.h"

#include "pictures/yard_comparison_of_records.h"
#include "season/lines.h"
#include "season/natural_order.h"

#include <algorithm>

namespace halfcup::touch {

CompareController::CompareController(Services& services, QObject* parent)
    : QObject(parent)
    , m_services(services) {}

PictureLegend CompareController::legend() const {
    return {pictures::legendOf(m_picture.shown)};
}

QString CompareController::summary() const {
    return pictures::sentenceOf(m_picture.shown);
}

QStringList CompareController::rows() const {
    return pictures::rowsInWords(m_picture.shown);
}

bool CompareController::show(const QString& yardId) {
    m_yardId = yardId;
    m_yardName.clear();
    refresh();
    return !m_yardName.isEmpty();
}

void CompareController::refresh() {
    std::optional<records::YardRecords> kept;
    m_services.kept([&] { kept = m_services.store.yardRecords(m_yardId.toStdString()); });
    if (kept) {
        // Colonies with the same load, and those without one, stand in the order of their labels.
        std::ranges::sort(kept->colonies, [](const records::Colony& a, const records::Colony& b) {
            const auto order = season::naturalOrder(a.label, b.label);
            return order != 0 ? order < 0 : a.id < b.id;
        });
        const records::Date today = m_services.today();
        m_picture.shown = pictures::yardComparisonOf(
            *kept, season::linesOn(kept->yard, today, m_services.handbook()), today);
        m_yardName = QString::fromStdString(kept->yard.name);
        m_demo = kept->yard.demo;
    }
    emit changed();
}

} // namespace halfcup::touch
