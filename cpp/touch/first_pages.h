// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QQmlComponent>
#include <QUrl>

#include <memory>
#include <vector>

namespace halfcup::touch {

/// Where a page lies in the program, such as "Main.qml".
[[nodiscard]] QUrl urlOfPage(const QString& page);

/// The pages of the first picture and all they are made of. They are read from here on, in the engine's own
/// thread where there is one, while the caller does what else must be done; who makes one of them meanwhile
/// waits until it is read. Needed until they are made; the engine keeps what is in use.
class FirstPages {
public:
    /// engine must outlive this.
    explicit FirstPages(QQmlEngine& engine);

private:
    std::vector<std::unique_ptr<QQmlComponent>> m_pages;
};

} // namespace halfcup::touch
