// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "stage.h"

#include <QStringList>

namespace halfcup::screens {

/// What is wrong with what the window shows, one sentence each; empty where all is well. Lengths are measured
/// in millimetres at the dots per inch that Look was made for.
///
/// Limits: 20 mm and 14 mm, 4 mm apart, and contrast 7:1 are the project's own design (after MIL-STD-1472 for
/// gloved keys and WCAG 2.2, success criterion 1.4.6).
QStringList wrongSizes(Stage& stage);     // too small, too near, outside, too high up
QStringList wrongTexts(Stage& stage);     // cut, outside, over each other
QStringList wrongContrasts(Stage& stage); // measured in the picture
QStringList wrongNames(Stage& stage);     // without a name or a press for a screen reader
QStringList wrongMainActions(Stage& stage, int expected);

/// All of them, each with the name of the screen before it.
QStringList whatIsWrong(Stage& stage, const QString& screen, int mainActions = 1);

} // namespace halfcup::screens
