// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/messages.h"

namespace halfcup::touch {

void Messages::say(const QString& sentence) {
    if (sentence.isEmpty() || (!m_waiting.isEmpty() && m_waiting.last() == sentence))
        return;
    m_waiting.append(sentence);
    emit changed();
}

void Messages::dismiss() {
    if (m_waiting.isEmpty())
        return;
    m_waiting.removeFirst();
    emit changed();
}

} // namespace halfcup::touch
