// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "exchange/csv_writer.h"
#include "exchange/report.h"

namespace halfcup::exchange {

enum class Paper { A4, Letter };

/// Lays the report out on paper and writes it as PDF: portrait, page numbers "page 2 of 5", the head of a
/// table again on each page, rows and treatments never cut by the end of a page. Texts stay texts, with their
/// fonts embedded, so that they can be searched and copied. Returns the number of pages.
///
/// Needs a QGuiApplication (also without a screen: platform "offscreen"). The whole file is made in memory,
/// then handed to the sink: about 0.3 MB for 1,000 washes. Throws std::runtime_error with a sentence where
/// the machine has no font.
int writeReportPdf(const Report& report, Paper paper, const ByteSink& sink);

} // namespace halfcup::exchange
