// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/wash_controller.h"

// The steps that only some methods have: a jar put aside, a board, brood.
namespace halfcup::touch {

bool WashController::setAside(const QString& label) {
    if (!maySetAside())
        return false;
    m_sample.jar = label.trimmed().toStdString();
    m_position.park(m_sample);
    if (!keep())
        return false;
    leave();
    emit putInTray();
    return true;
}

/// A step of the board is done: it lies and waits in the tray, or it goes on.
void WashController::boardDone() {
    if (!isAt(records::Step::LayBoard) && !isAt(records::Step::PullBoard) && !isAt(records::Step::BoardCells))
        return;
    m_sample.board = m_board.value();
    advance();
    if (!records::waits(m_sample))
        return;
    leave();
    emit putInTray();
}

void WashController::cellsOpened(std::int64_t cells) {
    if (!isAt(records::Step::OpenedCells))
        return;
    m_sample.openedCells = cells;
    advance();
}

} // namespace halfcup::touch
