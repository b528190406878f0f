// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// How long it takes from the touch that opens a page to its picture: bench_pages DATABASE RUNS. One line for
// each page and run: its name and milliseconds. The clock stands where the records of bench_make_records end.
#include "device/fake/fake_platform.h"
#include "device/fake/fake_surroundings.h"
#include "place/scripted_position_source.h"
#include "touch/program.h"

#include <QElapsedTimer>
#include <QGuiApplication>
#include <QQuickWindow>
#include <QSignalSpy>
#include <QTest>

#include <cstdio>
#include <functional>

using namespace halfcup;
using touch::Navigator;

namespace {

constexpr std::int64_t todayMs = 1'781'600'400'000; // 2026-06-16T09:00Z
constexpr int longestMs = 20'000;

class Pages {
public:
    explicit Pages(const char* database)
        : m_device(device::makeFakePlatform(todayMs)) {
        touch::ProgramOptions options;
        options.databasePath = QString::fromLocal8Bit(database);
        options.surroundings = &m_around.surroundings;
        options.makeSource = [](const QString&) { return std::make_unique<place::ScriptedPositionSource>(); };
        m_program = std::make_unique<touch::Program>(m_device.platform, options);
        if (!m_program->show() || !QTest::qWaitForWindowExposed(m_program->window()))
            throw std::runtime_error("The pages could not be shown.");
    }

    void measure(const char* name, const std::function<void()>& open) {
        app().navigator()->home();
        app().navigator()->open(Navigator::Setup); // from a page that shows no records
        QTest::qWait(100);
        QSignalSpy frames(m_program->window(), &QQuickWindow::frameSwapped);
        QElapsedTimer timer;
        timer.start();
        open();
        if (frames.isEmpty() && !frames.wait(longestMs))
            throw std::runtime_error("No picture came.");
        std::printf("%s %.3f\n", name, static_cast<double>(timer.nsecsElapsed()) / 1e6);
    }

    touch::App& app() { return m_program->app(); }

private:
    device::FakePlatform m_device;
    device::FakeSurroundings m_around;
    std::unique_ptr<touch::Program> m_program;
};

} // namespace

int main(int argc, char** argv) {
    const QGuiApplication application(argc, argv);
    if (argc != 3) {
        std::fputs("usage: bench_pages DATABASE RUNS\n", stderr);
        return 2;
    }
    touch::prepareQuick();
    Pages pages(argv[1]);
    const QString colony = pages.app().here()->colonies()->entries().first().colonyId;
    for (int run = 0; run < std::atoi(argv[2]); ++run) {
        pages.measure("here", [&] { pages.app().navigator()->home(); });
        pages.measure("colony", [&] { pages.app().here()->openColony(colony); });
        pages.measure("season", [&] { pages.app().navigator()->open(Navigator::Season); });
    }
    return 0;
}
