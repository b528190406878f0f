#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""A yard round through the real program, killed after three washes. usage: round.py HALFCUP HALFCUP-DESK

The yard's figures on the page are held against those of halfcup-desk's own way to them, for the same counts.
"""

import math
import subprocess
import sys

from halfcup_journey import check, run
from wash_steps import count, demo_records, the_wash, to_the_answer, to_the_count, to_the_shake

COUNTS = (3, 2, 4)


def load(per_100):
    """As the pages write it."""
    return f"{per_100:.0f}" if per_100 >= 9.95 else f"{per_100:.1f}"


def by_desk(samples, colonies):
    """q05, q50, q95 of the yard's mean, in per 100."""
    own = 0.1  # the part of a scoop's spread that is its own; the rest all scoops of one hand share
    cv = samples[0]["bees_cv"]
    shared = math.sqrt(max(0.0, math.log1p(cv * cv) - math.log1p(own * own)))
    rows = "yard,colonies,mites,bees,bees_cv\n" + "".join(
        f"A,{colonies},{sample['mites']},{sample['bees_mean']!r},{min(cv, own)!r}\n" for sample in samples)
    told = subprocess.run([sys.argv[2], "yard", "--line", "3", "--scoop-shared-sd", repr(shared)], input=rows,
                          capture_output=True, text=True, timeout=30)
    check(told.returncode == 0, f"halfcup-desk: {told.stderr}")
    cells = dict(zip(*(line.split(",") for line in told.stdout.splitlines()[:2])))
    return [float(cells[name]) for name in ("mean_q05", "mean_q50", "mean_q95")]


def yard_round(stage):
    demo_records(stage)
    stage.start("--position", "none")
    stage.press("Yard round", begins=True)
    stage.sees("Picked by chance")
    stage.press("Start the round")
    stage.sees("Still to wash, in this order")
    begun = stage.rows("SELECT * FROM round")
    check(len(begun) == 1 and begun[0]["ended_at_ms"] is None, f"{len(begun)} rounds on the disk")
    colonies = begun[0]["colony_ids"].split()
    yard = begun[0]["yard_id"]
    check(len(set(colonies)) == len(colonies) >= 3, f"its colonies: {colonies}")
    for number, mites in enumerate(COUNTS):
        label = stage.rows("SELECT label FROM colony WHERE id = ?", colonies[number])[0]["label"]
        if number == 0:
            to_the_shake(stage, f"Wash colony {label} next", begins=False)
        else:
            to_the_shake(stage, f"Wash colony {label}", begins=True)
        to_the_count(stage)
        count(stage, 1, mites)
        to_the_answer(stage)
        stage.sees("About ")
        check(the_wash(stage)["colony_id"] == colonies[number], f"wash {number + 1} is of another colony")
        stage.kill()
        stage.start("--position", "none")
        stage.sees(f"Round: {number + 1} of {len(colonies)} washed")

    stage.press(f"Round: {len(COUNTS)} of", begins=True)
    stage.press("End the round")
    if not stage.rows("SELECT 1 FROM round WHERE ended_at_ms IS NOT NULL"):
        stage.sees("The answer is not clear yet.")
        stage.press("End the round")
    stage.sees("in this yard. It could be anything from")
    page = stage.text()
    samples = stage.rows("SELECT * FROM sample WHERE started_at_ms >= ? AND state = 'finished'",
                         begun[0]["started_at_ms"])
    check(sorted(sample["mites"] for sample in samples) == sorted(COUNTS), "not these counts are on the disk")
    living = stage.rows("SELECT count(*) AS n FROM colony WHERE yard_id = ? AND removed = 0", yard)[0]["n"]
    low, middle, high = (load(figure) for figure in by_desk(samples, living))
    wanted = f"About {middle} mites on every 100 bees in this yard. It could be anything from {low} to {high}."
    check(wanted in page, f"'{wanted}' is not on the page:\n{page}")
    check(f"From {len(COUNTS)} of the {living} in this yard" in page, f"not from how many:\n{page}")
    ended = stage.rows("SELECT * FROM round")
    check(len(ended) == 1 and ended[0]["ended_at_ms"], "the end of the round is not on the disk")


run(yard_round)
