// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// Comparison with a printed figure: right to its last digit, and no looser.
#include <QTest>

#include <cmath>

// |value - printed| at most half a unit of the printed figure's last digit: decimals is how many stand behind
// its point. (A little is added for the binary form of the printed figure itself.)
inline bool asPrinted(double value, double printed, int decimals) {
    return std::abs(value - printed) <= 0.5 * std::pow(10.0, -decimals) * (1 + 1e-9);
}

#define COMPARE_PRINTED(value, printed, decimals)                                                            \
    do {                                                                                                     \
        const double got_ = (value);                                                                         \
        QVERIFY2(                                                                                            \
            asPrinted(got_, (printed), (decimals)),                                                          \
            qPrintable(QStringLiteral(#value " is %1, printed is %2").arg(got_, 0, 'g', 12).arg(printed)));  \
    } while (false)
