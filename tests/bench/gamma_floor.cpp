// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// The floor under an estimate: three plain gamma quantiles of Boost.Math, as if bees and recovery were known
// exactly. bench_gamma_floor ROWS prints "gamma MICROSECONDS", for one row.
#include <boost/math/distributions/gamma.hpp>

#include <chrono>
#include <cstdio>
#include <cstdlib>

int main(int argc, char** argv) {
    const int rows = argc == 2 ? std::atoi(argv[1]) : 0;
    if (rows < 1) {
        std::fputs("usage: bench_gamma_floor ROWS\n", stderr);
        return 2;
    }
    double sum = 0; // said below, so that no compiler leaves the work out
    const auto begun = std::chrono::steady_clock::now();
    for (int row = 0; row < rows; ++row) {
        const boost::math::gamma_distribution<> load(row % 40 + 1, 100.0 / (100 + row % 500));
        for (const double share : {0.05, 0.5, 0.95})
            sum += boost::math::quantile(load, share);
    }
    const std::chrono::duration<double, std::micro> taken = std::chrono::steady_clock::now() - begun;
    std::printf("gamma %.4f\n", taken.count() / rows);
    return sum > 0 ? 0 : 1;
}
