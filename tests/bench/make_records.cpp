// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Makes a database of many washes for the benches (many_records.h): bench_make_records DATABASE COLONIES
// SAMPLES.
#include "many_records.h"

#include <cstdio>
#include <cstdlib>

int main(int argc, char** argv) {
    const int colonies = argc == 4 ? std::atoi(argv[2]) : 0;
    const int samples = argc == 4 ? std::atoi(argv[3]) : 0;
    if (colonies < 1 || samples < colonies) {
        std::fputs("usage: bench_make_records DATABASE COLONIES SAMPLES, at least a sample for each colony\n",
                   stderr);
        return 2;
    }
    halfcup::bench::makeManyRecords(argv[1], colonies, samples);
    return 0;
}
