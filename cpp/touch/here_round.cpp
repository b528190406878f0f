// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// The yard as a whole on the Here page: its round, and its colonies compared.
#include "touch/here_controller.h"
#include "touch/round_records.h"

namespace halfcup::touch {

// Throws store::StoreError, as what it is called among.
void HereController::readRound() {
    m_roundLine.clear();
    m_roundNextId.clear();
    m_roundNextLabel.clear();
    m_roundWaits = false;
    const auto round = openRound(m_services, m_yardId.toStdString());
    if (!round)
        return;
    const season::RoundReading reading = readKept(m_services, *round).reading;
    m_roundLine = tr("Round: %1 of %2 washed").arg(reading.done()).arg(reading.planned());
    m_roundWaits = reading.inTray() > 0;
    const auto next = reading.next();
    if (const auto colony = next ? m_services.store.colony(*next) : std::nullopt) {
        m_roundNextId = QString::fromStdString(colony->id);
        m_roundNextLabel = QString::fromStdString(colony->label);
    }
}

void HereController::openYardRound() {
    if (m_view == AtYard)
        emit roundWanted(m_yardId);
}

void HereController::compareColonies() {
    if (m_view == AtYard)
        emit compareWanted(m_yardId);
}

} // namespace halfcup::touch
