// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/keepers_handbook.h"

#include "handbook/built_in.h"
#include "touch/words.h"

namespace halfcup::touch {

const handbook::Handbook& KeepersHandbook::read() const {
    if (!m_read) {
        m_read = handbook::builtIn();
        m_read->sayIn([](const std::string& text) { return words::fromHandbook(text).toStdString(); });
    }
    return *m_read;
}

} // namespace halfcup::touch
