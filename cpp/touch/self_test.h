// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "touch/program.h"

namespace halfcup::touch {

/// Whether the command line asks for a self-test. Then this also sees to it that none needs a display or a
/// graphics driver, unless the environment names one; so call it before there is a QGuiApplication.
[[nodiscard]] bool asksForSelfTest(int argc, char** argv);

/// Tries the program on this device, on records of its own in a temporary folder that goes with it: the
/// records, the figures, the handbook, the pages. Then says which services of the system are here, and for
/// each that is not what is done instead; one that is missing is no fault. A line each to stdout. Returns
/// the exit code: 0 where all was well, 1 otherwise. Waits up to three seconds for services that answer late.
/// From then on platform has the folders of the test. options: those of the window and the language count.
int selfTest(device::Platform& platform, const ProgramOptions& options);

/// Opens every page on the records there are; returns how many. What the pages complain of is in
/// program.qmlWarnings().
int openEveryPage(Program& program);

} // namespace halfcup::touch
