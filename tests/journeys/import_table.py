#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""A table of earlier washes through the real program. usage: import_table.py HALFCUP HALFCUP-DESK

The table lies in the keeper's documents. Its answers are held against those that halfcup-desk computes for the same counts.
"""

import os
import subprocess
import sys

from halfcup_journey import check, run
from wash_steps import demo_records

ROWS = [("18/05/2023", "4", 9, 300), ("18/05/2023", "7", 0, 310), ("20/06/2023", "4", 21, 290)]


def by_desk():
    table = "mites,bees,bees_cv,line\n" + "".join(f"{mites},{bees},0.1,3\n" for _, _, mites, bees in ROWS)
    told = subprocess.run([sys.argv[2], "assess"], input=table, capture_output=True, text=True, timeout=30)
    check(told.returncode == 0, f"halfcup-desk: {told.stderr}")
    names, *lines = [line.split(",") for line in told.stdout.splitlines()]
    return [dict(zip(names, cells)) for cells in lines]


def import_table(stage):
    documents = os.path.join(stage.folder, "Documents")
    os.makedirs(documents)
    with open(os.path.join(documents, "washes.csv"), "w", encoding="utf-8") as table:
        table.write("Date,Hive,Varroa,Bees\n" + "".join(f"{day},{hive},{mites},{bees}\n" for day, hive, mites, bees in ROWS)
                    + "20/06/2023,7,three,300\n")
    demo_records(stage)
    stage.start("--position", "none")
    stage.press("Season")
    stage.press("Share")
    stage.press("A table of earlier washes", begins=True)
    stage.press("washes.csv", begins=True)
    stage.sees("Which column is what?")
    stage.tab_to("Name of the yard")
    stage.write("Name of the yard", "Behind the mill")
    stage.press("Look at the washes")
    stage.sees("3 washes to keep")
    stage.sees("1 new yard")
    stage.sees("1 row refused")
    question = "SELECT s.*, c.label FROM sample s JOIN colony c ON c.id = s.colony_id WHERE s.fix_source = 'table' " \
               "ORDER BY s.started_at_ms, c.label"
    check(stage.rows(question) == [], "something was written before the last touch")
    stage.press("Keep 3 washes")
    stage.sees("3 washes kept.")
    kept = stage.rows(question)
    check([(row["label"], row["mites"], row["bees_mean"]) for row in kept]
          == [(hive, mites, float(bees)) for _, hive, mites, bees in ROWS], f"kept: {[dict(row) for row in kept]}")
    for row, told in zip(kept, by_desk()):
        for ours, theirs in (("load_q05", "load_q05"), ("load_q50", "load_q50"), ("load_q95", "load_q95"),
                             ("chance_over", "chance_over")):
            check(abs(row[ours] - float(told[theirs])) <= 1e-8 * (1 + abs(row[ours])), f"{ours}: {row[ours]}, {told}")
    stage.press("Done")
    stage.quit()


run(import_table)
