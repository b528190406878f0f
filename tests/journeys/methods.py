#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""One way of counting beside the alcohol wash, from the colony's page to its answer. usage: methods.py HALFCUP METHOD

METHOD: soapy_wash, sugar_roll, sticky_board or drone_brood. The figures are those of tests/unit/season_boards.cpp.
"""

import sys

from halfcup_journey import check, run
from wash_steps import count, demo_records

JULY = "2026-07-17T09:00:00Z"
DAY_LATER = "2026-07-18T09:01:00Z"  # the board was laid some seconds after nine


def begin(stage, method, at=JULY):
    demo_records(stage)
    stage.start("--position", "none", "--at", at)
    open_colony(stage)
    stage.press("Count another way")
    stage.tab_to(method, begins=True)
    stage.press(method, begins=True)


def open_colony(stage):
    stage.tab_to("Colony 4", begins=True)
    stage.press("Colony 4", begins=True)
    stage.sees("Count another way")


def the_sample(stage, method):
    rows = stage.rows("SELECT * FROM sample WHERE method = ?", method)  # the demo knows alcohol washes only
    check(len(rows) == 1, f"{len(rows)} samples by {method}")
    return rows[0]


def type_number(stage, number):
    for digit in str(number):
        stage.press(digit)
    stage.press("Keep")


def soapy_wash(stage):
    begin(stage, "Soapy-water wash")
    stage.sees("Where is the queen?")
    check("burn" not in stage.text(), "soapy water is said to burn")
    stage.press("Queen seen and safe")
    stage.press("Scooped")
    stage.sees("washing-up liquid")
    stage.press("Lid on: start the shake")
    stage.sees("less foam")
    stage.press("Stop here")
    stage.sees("Foam hides mites")
    stage.press("Count the mites")
    count(stage, 1, 9)
    stage.press("Done")
    stage.sees("fresh soapy water")
    stage.press("Show the answer")
    stage.sees("Over your line")
    check("3.2" in stage.text() and "1.4 to 7.8" in stage.text(), stage.text())
    sample = the_sample(stage, "soapy_wash")
    check((sample["method"], sample["mites"], sample["recovery"]) == ("soapy_wash", 9, 1), f"{dict(sample)}")


def sugar_roll(stage):
    begin(stage, "Powdered-sugar roll")
    stage.sees("The bees go back alive")
    stage.press("Queen seen and safe")
    stage.press("Change the scoop")
    stage.tab_to("Type the bees")
    stage.press("Type the bees")
    type_number(stage, 310)
    stage.press("Use this scoop", begins=True)
    stage.press("Scooped")
    stage.sees("two tablespoons of powdered sugar")
    check("Wash it later" not in stage.text(), "bees that are to live may wait in a jar")
    stage.press("All white: let them rest")
    stage.sees("The mites lose their hold")
    stage.press("Shake the sugar out")
    stage.sees("white plate")
    stage.press("Stop here")
    stage.press("Type it")
    type_number(stage, 43)
    stage.sees("43 mites")
    stage.press("Done")
    stage.tab_to("43 mites on about 310 bees: 13.9 per 100, before recovery")
    sample = the_sample(stage, "sugar_roll")
    check((sample["method"], sample["mites"], sample["bees_mean"]) == ("sugar_roll", 43, 310), f"{dict(sample)}")
    check(sample["recovery"] == 0.9 and sample["mites_second_rinse"] is None, f"{dict(sample)}")
    check(13.9 < sample["load_q50"] < 18, f"the load: {sample['load_q50']}")


def sticky_board(stage):
    begin(stage, "Sticky board")
    stage.sees("Lay the board")
    if "Its floor is screened" in stage.text():
        stage.press("Its floor is screened")
    stage.press("Board laid: keep the time")
    stage.sees("Board under colony 4")
    laid = the_sample(stage, "sticky_board")
    check((laid["state"], laid["step"]) == ("draft", "pull_board"), f"{laid['state']} at {laid['step']}")
    stage.kill()

    stage.start("--position", "none", "--at", DAY_LATER)
    stage.press("1 board lies", begins=True)
    stage.press("Board under colony 4", begins=True)
    stage.sees("24 h under the colony")
    stage.press("Board pulled")
    stage.press("The whole board")
    count(stage, 1, 12)
    stage.press("Done")
    stage.sees("Over the handbook's line")
    stage.sees("About 12 mites a day. It could be anything from 7.3 to 19.")
    stage.sees("A board is weak evidence beside a wash")
    sample = the_sample(stage, "sticky_board")
    check(sample["mites"] is None and sample["load_q50"] is None, "a board was taken for a wash")
    check((sample["other_count"], sample["other_line"]) == (12, 10), f"{dict(sample)}")
    check(abs(sample["other_q50"] - 12.168) < 0.01, f"the fall: {sample['other_q50']}")
    check(sample["board_pulled_at_ms"] - sample["board_laid_at_ms"] - 86_400_000 < 120_000, "its hours are wrong")


def drone_brood(stage):
    begin(stage, "Drone brood opened")
    stage.sees("Opened brood dies")
    stage.press("Queen seen and safe")
    for cells in range(1, 17):
        stage.press("Count one cell")
        stage.sees("1 cell" if cells == 1 else f"{cells} cells")
    stage.press("Done")
    stage.press("Type the cells opened")
    type_number(stage, 15)
    stage.sees("so many at the least were opened")
    for _ in range(2):
        stage.press("Delete")
    type_number(stage, 100)
    stage.sees("About 16 of 100 drone cells. It could be anything from 11 to 23.")
    stage.sees("No load in mites per 100 bees can be read from it")
    sample = the_sample(stage, "drone_brood")
    check((sample["other_count"], sample["opened_cells"], sample["mites"]) == (16, 100, None), f"{dict(sample)}")
    stage.press("Back")
    open_colony(stage)
    stage.sees("hold each against its own kind")
    stage.tab_to("Drone brood opened: 16 of 100 drone cells", begins=True)


run({each.__name__: each for each in (soapy_wash, sugar_roll, sticky_board, drone_brood)}[sys.argv[2]])
