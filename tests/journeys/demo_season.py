#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""A season with one colony, from a wash over the line to the inspector's question. usage: demo_season.py HALFCUP

The program's clock is set for each visit, as if the phone had been taken out on that day.
"""

from halfcup_journey import check, run
from wash_steps import count, the_wash, to_the_answer, to_the_count, to_the_shake


def visit(stage, time, *options):
    stage.start("--position", "none", "--at", time, *options)


def wash(stage, mites, first="Wash colony 4", begins=False):
    to_the_shake(stage, first, begins=begins)
    to_the_count(stage)
    count(stage, 1, mites)
    to_the_answer(stage)


def open_colony(stage):
    stage.tab_to("Colony 4", begins=True)
    stage.press("Colony 4", begins=True)


def keep_the_record(stage):
    """Keeps it, and stands by it where the program asks once more."""
    stage.press("Keep this record")
    stage.wait(lambda: "Please look again" in stage.text() or "Running" in stage.text(), "the record, or a question")
    if "Please look again" in stage.text():
        stage.press("Keep it all the same")
    stage.sees("Running")


def treat(stage, highs, product, batch):
    stage.press("What is so now")
    stage.write("Daily highs", highs)
    stage.press("Keep")
    stage.sees("What to treat with")
    stage.tab_to("Formic acid", begins=True)
    stage.press("Formic acid", begins=True)
    stage.press("Record this treatment")
    stage.write("Product", product)
    for field, words in (("Withdrawal for honey, days", "0"), ("Batch", batch)):
        stage.tab_to(field)
        stage.write(field, words)
    keep_the_record(stage)


def demo_season(stage):
    # 18 May, the demo's morning: colony 4 is due, and it is over the line.
    visit(stage, "2026-05-18T07:40:00Z", "--demo")
    stage.sees("Alder Bend")
    wash(stage, 9)
    stage.sees("Over your line")
    stage.press("What to treat with")
    treat(stage, "24 26 27", "Pads of the farm shop", "FA-0417")
    stage.quit()
    treatment = stage.rows("SELECT * FROM treatment WHERE batch = 'FA-0417' ORDER BY recorded_at_ms DESC")[0]
    check(treatment["substance"] == "formic-acid", f"recorded was {treatment['substance']}")
    check(treatment["first_day"] == "2026-05-18", f"it began on {treatment['first_day']}")
    check(treatment["withdrawal_days"] == 0, "a withdrawal of none is not on the record")
    check(treatment["verdict"] == "with_care", f"the app's word on it: {treatment['verdict']}")  # supers are on

    # The day it has to come out.
    visit(stage, "2026-05-24T08:00:00Z")
    stage.press("Season")
    stage.sees("Running now")
    stage.press("Take out: Pads of the farm shop", begins=True)
    stage.press("Taken out today")
    stage.sees("Taken out on")
    stage.quit()
    treatment = stage.rows("SELECT * FROM treatment WHERE id = ?", treatment["id"])[0]
    check(treatment["removed_on"] == "2026-05-24", f"taken out on {treatment['removed_on']}")

    # Two weeks later: did it work?
    visit(stage, "2026-06-08T08:00:00Z")
    stage.sees("did the treatment work?")
    open_colony(stage)
    wash(stage, 1, first="Wash this colony")
    stage.sees("Under your line")
    sample = the_wash(stage)
    check(sample["mites"] == 1, f"the sample holds {sample['mites']} mites")
    stage.quit()
    visit(stage, "2026-06-08T09:00:00Z")
    open_colony(stage)
    stage.tab_to("Pads of the farm shop", begins=True)  # below the picture of its loads
    stage.press("Pads of the farm shop", begins=True)
    stage.press("Did it work?")
    stage.sees("The mark")
    stage.quit()

    # It comes back in June, and pads go in again over 1 July.
    visit(stage, "2026-06-28T08:00:00Z")
    open_colony(stage)
    stage.press("Treat")
    treat(stage, "22 23 24", "Pads of the farm shop", "FA-0530")
    stage.quit()

    # What was in colony 4 on 1 July, which batch, when may honey be taken? One page answers.
    visit(stage, "2026-09-01T08:00:00Z")
    open_colony(stage)
    stage.press("On a day")
    stage.press("Another day")
    stage.write("Day", "1 July 2026")
    stage.press("Show this day")
    for words in ("On 1 July 2026", "Pads of the farm shop", "Batch: FA-0530", "Honey", "Alder Bend"):
        stage.sees(words)
    stage.quit()


run(demo_season)
