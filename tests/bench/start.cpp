// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// The start of the app up to its first picture, as touch/main.cpp puts it together: bench_start DATABASE.
// The clock stands where the records of bench_make_records end.
#include "first_frame.h"
#include "many_records.h"

#include "device/shifted_clock.h"
#include "touch/program.h"
#include "touch/recovery_controller.h"

#include <QGuiApplication>

#include <cstdio>

using namespace halfcup;

int main(int argc, char** argv) {
    const QGuiApplication application(argc, argv);
    if (argc != 2) {
        std::fputs("usage: bench_start DATABASE\n", stderr);
        return 2;
    }
    touch::prepareQuick();
    device::Platform platform = device::makePlatform();
    platform.clock =
        std::make_unique<device::ShiftedClock>(std::move(platform.clock), bench::dayAfterwardsMs);
    touch::ProgramOptions options;
    options.databasePath = QString::fromLocal8Bit(argv[1]);
    touch::refuseDamaged(options.databasePath);
    touch::Program program(platform, options);
    if (!program.show())
        return 1;
    bench::endWithFirstFrame(program.window());
    return QGuiApplication::exec();
}
