// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// How long it takes from the touch that opens a page to its picture: bench_pages DATABASE RUNS. One line for
// each page and run: its name and milliseconds. The clock stands where the records of bench_make_records end.
#include "many_records.h"
#include "shown_program.h"

#include <QElapsedTimer>
#include <QGuiApplication>
#include <QSignalSpy>

#include <cstdio>
#include <cstdlib>

using namespace halfcup;
using touch::Navigator;

namespace {

constexpr int longestMs = 20'000;

void measure(bench::ShownProgram& program, const char* name, const std::function<void()>& open) {
    program.app().navigator()->home();
    program.app().navigator()->open(Navigator::Setup); // from a page that shows no records
    QTest::qWait(100);
    QSignalSpy frames(program.window(), &QQuickWindow::frameSwapped);
    QElapsedTimer timer;
    timer.start();
    open();
    if (frames.isEmpty() && !frames.wait(longestMs))
        throw std::runtime_error("No picture came.");
    std::printf("%s %.3f\n", name, static_cast<double>(timer.nsecsElapsed()) / 1e6);
}

} // namespace

int main(int argc, char** argv) {
    const QGuiApplication application(argc, argv);
    if (argc != 3) {
        std::fputs("usage: bench_pages DATABASE RUNS\n", stderr);
        return 2;
    }
    touch::prepareQuick();
    bench::ShownProgram program(QString::fromLocal8Bit(argv[1]), bench::dayAfterwardsMs);
    touch::App& app = program.app();
    const QString colony = app.here()->colonies()->entries().first().colonyId;
    for (int run = 0; run < std::atoi(argv[2]); ++run) {
        measure(program, "here", [&] { app.navigator()->home(); });
        measure(program, "colony", [&] { app.here()->openColony(colony); });
        measure(program, "season", [&] { app.navigator()->open(Navigator::Season); });
        program.program().store().setSetting("bench", std::int64_t{run}); // what was read is read again
        measure(program, "season_after_writing", [&] { app.navigator()->open(Navigator::Season); });
    }
    return 0;
}
