// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/fake/fake_platform.h"
#include "device/fake/fake_surroundings.h"
#include "place/scripted_position_source.h"
#include "touch/program.h"

#include <QQuickWindow>
#include <QTest>

#include <functional>
#include <memory>
#include <stdexcept>

namespace halfcup::bench {

/// The real program on a database, in a window, with a set clock and without a receiver.
class ShownProgram {
public:
    /// prepare: what is done to the records before the pages are shown. Throws where they cannot be.
    ShownProgram(const QString& database, std::int64_t nowMs,
                 const std::function<void(touch::Program&)>& prepare = {})
        : m_device(device::makeFakePlatform(nowMs)) {
        touch::ProgramOptions options;
        options.databasePath = database;
        options.surroundings = &m_around.surroundings;
        options.makeSource = [](const QString&) { return std::make_unique<place::ScriptedPositionSource>(); };
        m_program = std::make_unique<touch::Program>(m_device.platform, options);
        if (prepare)
            prepare(*m_program);
        if (!m_program->show() || !QTest::qWaitForWindowExposed(window()))
            throw std::runtime_error("The pages could not be shown.");
    }

    touch::Program& program() { return *m_program; }
    touch::App& app() { return m_program->app(); }
    QQuickWindow* window() { return m_program->window(); }
    device::SetClock& clock() { return *m_device.clock; }

private:
    device::FakePlatform m_device;
    device::FakeSurroundings m_around;
    std::unique_ptr<touch::Program> m_program;
};

} // namespace halfcup::bench
