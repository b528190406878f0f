// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QString>
#include <QStringList>

namespace halfcup::touch {

/// The pages for people that come with the app (assets/pages), by the names of their files without the
/// ending.
[[nodiscard]] QStringList builtInPages();

/// A page as Markdown that fits a narrow screen; empty where there is none of that name. Small tables become
/// lists
/// ("- first: second, third"); tables wider than four columns are left out, and a sentence says so. The first
/// heading is the page's title and is left out too.
[[nodiscard]] QString pageForScreen(const QString& name);
[[nodiscard]] QString pageTitle(const QString& name);

} // namespace halfcup::touch
