// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

// Time of one estimate (three quantiles and a chance, 1e-6 relative) against R's integrate() on the same
// washes in the same run, and the same figures. mites_speed RSCRIPT SCRIPT; exit code 77 without R or
// optimisation. Promise: at most 100 microseconds each, at least 100 times faster than R.
#include "mites/wash_load.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <sstream>
#include <string>
#include <vector>

using namespace halfcup::mites;

namespace {

constexpr double kInfiniteShape = std::numeric_limits<double>::infinity();
const std::vector<Wash> washes{{0, 302.1678, 0.1204, 1, 0, 7},      {1, 302.1678, 0.1204, 1, 0, 7},
                               {9, 302.1678, 0.1204, 1, 0, 7},      {20, 328.8, 0.0977, 1, 0, 7},
                               {9, 300, 0.1, 1, 0, kInfiniteShape}, {3, 300, 0.1, 0.95, 0.03, 20},
                               {12, 150, 0.3, 0.9, 0.05, 20},       {7, 300, 0.1, 0.7, 0.15, kInfiniteShape}};
constexpr double kLine = 3;

using Answer = std::array<double, 4>;

Answer answer(const Wash& wash) {
    const LoadPosterior load(wash);
    const LoadEstimate e = load.estimate();
    return {e.q05, e.q50, e.q95, load.chanceOver(kLine)};
}

// Best of several rounds: the least disturbed by whatever else the machine does.
double microseconds(const Wash& wash) {
    double best = 1e9;
    double kept = 0;
    for (int round = 0; round < 20; ++round) {
        const auto start = std::chrono::steady_clock::now();
        for (int i = 0; i < 50; ++i)
            kept += answer(wash)[1];
        const std::chrono::duration<double, std::micro> taken = std::chrono::steady_clock::now() - start;
        best = std::min(best, taken.count() / 50);
    }
    return kept > 0 ? best : 0;
}

} // namespace

int main(int count, char** arguments) {
#if !defined(__OPTIMIZE__) || defined(__SANITIZE_ADDRESS__)
    std::printf("This build is not optimised, so its times mean nothing.\n");
    return 77;
#endif
    std::string command;
    if (count == 3 && std::string(arguments[1]).find("NOTFOUND") == std::string::npos) {
        std::ostringstream line;
        line.precision(17);
        line << '"' << arguments[1] << "\" --vanilla \"" << arguments[2] << '"';
        for (const Wash& wash : washes)
            line << ' ' << wash.mites << ' ' << wash.beesMean << ' ' << wash.beesCv << ' ' << wash.recovery
                 << ' ' << wash.recoverySd << ' '
                 << (std::isinf(wash.jarShape) ? "Inf" : std::to_string(wash.jarShape));
        command = line.str();
    }
    FILE* r = command.empty() ? nullptr : popen(command.c_str(), "r");
    if (r == nullptr) {
        std::printf("R is not on this machine, so there is nothing to compare with.\n");
        return 77;
    }
    std::printf("| mites, bees, CV, recovery, sd, shape | microseconds | R, microseconds | times | largest "
                "difference |\n"
                "|---|---|---|---|---|\n");
    bool good = true;
    double ours = 0;
    double theirs = 0;
    for (const Wash& wash : washes) {
        Answer expected{};
        double rMicroseconds = 0;
        if (std::fscanf(r, "%lf %lf %lf %lf %lf", &expected[0], &expected[1], &expected[2], &expected[3],
                        &rMicroseconds) != 5) {
            std::printf("R did not answer.\n");
            pclose(r);
            return 1;
        }
        const Answer found = answer(wash);
        double worst = 0;
        for (std::size_t i = 0; i < found.size(); ++i)
            worst = std::max(worst, std::abs(found[i] / expected[i] - 1));
        const double taken = microseconds(wash);
        std::printf("| %lld, %g, %g, %g, %g, %g | %.1f | %.0f | %.0f | %.1e |\n",
                    static_cast<long long>(wash.mites), wash.beesMean, wash.beesCv, wash.recovery,
                    wash.recoverySd, wash.jarShape, taken, rMicroseconds, rMicroseconds / taken, worst);
        good = good && worst < 1e-6 && taken <= 100;
        ours += taken;
        theirs += rMicroseconds;
    }
    pclose(r);
    std::printf("\nAll together %.0f times faster than R.\n", theirs / ours);
    return good && theirs / ours >= 100 ? 0 : 1;
}
