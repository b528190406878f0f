// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// The controllers of yards, colonies, washes and treatments: one a page. Gathered, so that App's header has
// room for what it says itself.
#include "touch/answer_controller.h"
#include "touch/check_controller.h"
#include "touch/choice_controller.h"
#include "touch/colony_controller.h"
#include "touch/compare_controller.h"
#include "touch/event_controller.h"
#include "touch/folder_controller.h"
#include "touch/here_controller.h"
#include "touch/history_controller.h"
#include "touch/lines_controller.h"
#include "touch/methods_controller.h"
#include "touch/on_day_controller.h"
#include "touch/other_answer_controller.h"
#include "touch/own_scoops_controller.h"
#include "touch/round_controller.h"
#include "touch/same_controller.h"
#include "touch/situation_controller.h"
#include "touch/sources_controller.h"
#include "touch/tray_controller.h"
#include "touch/treat_controller.h"
#include "touch/treatment_controller.h"
#include "touch/wash_controller.h"
#include "touch/yards_controller.h"
