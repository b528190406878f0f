#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""Kills the program in the middle of a wash, 200 times or a seventh of HALFCUP_KILLS where that is more, and
looks with other eyes at what is on the disk.

usage: kill_wash_test.py DRIVER [--kills N]

One database grows through all runs. The driver (kill_wash.cpp) says each act after the program acknowledged
it; SIGKILL falls 5 to 150 ms after its first line, and every tenth time while it still opens the database.
What is checked is read with Python's own sqlite3 and folded here, not with the program's code. SIGKILL ends
the program, not the system: what a dead battery does to the disk is SQLite's promise (synchronous = FULL).
"""

import argparse
import os
import random
import shutil
import signal
import sqlite3
import subprocess
import sys
import tempfile
import time

STEPS = ["safety", "scoop", "pour", "shake", "settle", "count", "second_rinse", "answer"]
NAMES = {"Safety": "safety", "Scoop": "scoop", "Pour": "pour", "Shake": "shake", "Settle": "settle",
         "Count": "count", "SecondRinse": "second_rinse"}
SEED = 20260615
FIRST_LINE_S = 20  # more than any start takes


def fold(events, rinse):
    """The figure the acts of one rinse make, as design and trade have it: an undo takes back the last act."""
    figure, before = 0, []
    for event_rinse, change, typed in events:
        if event_rinse != rinse:
            continue
        if change == "undo":
            if before:
                figure = before.pop()
            continue
        before.append(figure)
        figure = typed if change == "typed" else figure + 1
    return figure


class Judge:
    """Remembers everything that was ever acknowledged, and what is wrong with the disk."""

    def __init__(self, path):
        self.path = path
        self.counts = {}  # sample -> {events: (rinse, figure)}
        self.step = {}  # sample -> last acknowledged step
        self.leaving = set()
        self.finished = {}  # sample -> figure
        self.before = None  # (sample, step, events) of the draft before this run
        self.touched = set()
        self.resumes = 0
        self.taps = 0
        self.faults = []

    def fault(self, run, text):
        self.faults.append(f"kill {run}: {text}")

    def take(self, run, text):
        self.touched = {self.before[0]} if self.before else set()
        lines = text.split("\n")
        lines.pop()  # empty, or cut off in the middle of a line
        for number, line in enumerate(lines):
            word, sample, *rest = line.split()
            self.touched.add(sample)
            if word == "resumed":
                self.resumes += 1
                found = (sample, NAMES[rest[0]], int(rest[3]))
                if number != 0 or found != self.before:
                    self.fault(run, f"resumed {found}, on the disk was {self.before}")
                self.counts.setdefault(sample, {})[int(rest[3])] = (int(rest[1]), int(rest[2]))
                self.step[sample] = NAMES[rest[0]]
            elif word == "step":
                self.step[sample] = NAMES[rest[0]]
            elif word == "count":
                self.taps += 1
                self.counts.setdefault(sample, {})[int(rest[2])] = (int(rest[0]), int(rest[1]))
            elif word == "leaving":
                self.leaving.add(sample)
            elif word == "finished":
                self.finished[sample] = int(rest[0])
            else:
                self.fault(run, f"what is this: {line}")

    def look(self, run, everything=False):
        # A copy is looked at: the log the kill left behind is for the program itself to take up again.
        copy = self.path + ".looked-at"
        for ending in ("", "-wal"):
            if os.path.exists(copy + ending):
                os.remove(copy + ending)
            if os.path.exists(self.path + ending):
                shutil.copyfile(self.path + ending, copy + ending)
        database = sqlite3.connect(copy)
        try:
            if not database.execute("SELECT 1 FROM sqlite_master WHERE name = 'sample'").fetchone():
                if self.touched or everything:
                    self.fault(run, "there are no tables")
                return  # killed before the first table was made
            verdict = database.execute("PRAGMA integrity_check").fetchone()[0]
            if verdict != "ok":
                self.fault(run, f"integrity check: {verdict}")
            strays = database.execute("PRAGMA foreign_key_check").fetchall()
            if strays:
                self.fault(run, f"rows that point nowhere: {strays}")
            samples = set(self.step) | set(self.counts) if everything else self.touched
            for sample in samples:
                self.check(run, database, sample)
            drafts = database.execute("SELECT id, step FROM sample WHERE state = 'draft'").fetchall()
            if len(drafts) > 1:
                self.fault(run, f"{len(drafts)} drafts")
            self.before = None
            if drafts:
                events = database.execute("SELECT count(*) FROM count_event WHERE sample_id = ?",
                                          (drafts[0][0],)).fetchone()[0]
                self.before = (*drafts[0], events)
        finally:
            database.close()

    def check(self, run, database, sample):
        row = database.execute("SELECT state, step, mites FROM sample WHERE id = ?", (sample,)).fetchone()
        if row is None:
            self.fault(run, f"sample {sample} is lost")
            return
        state, step, mites = row
        reached = STEPS.index(self.step.get(sample, "safety"))
        if not reached <= STEPS.index(step) <= reached + 1:
            self.fault(run, f"{sample} is at {step}, acknowledged was {STEPS[reached]}")
        if state == "abandoned" and sample not in self.leaving:
            self.fault(run, f"{sample} was abandoned by nobody")
        if (state == "finished") != (step == "answer"):
            self.fault(run, f"{sample} is {state} at {step}")
        if sample in self.finished and (state, mites) != ("finished", self.finished[sample]):
            self.fault(run, f"{sample} was finished with {self.finished[sample]}, is {state} with {mites}")
        rows = database.execute("SELECT number, rinse, change, typed FROM count_event WHERE sample_id = ?"
                                " ORDER BY number", (sample,)).fetchall()
        if [r[0] for r in rows] != list(range(1, len(rows) + 1)):
            self.fault(run, f"the acts of {sample} are not numbered 1, 2, 3 ...")
        events = [r[1:] for r in rows]
        for count, (rinse, figure) in self.counts.get(sample, {}).items():
            if count > len(events):
                self.fault(run, f"{sample}: {count} acts were acknowledged, {len(events)} are there")
            elif fold(events[:count], rinse) != figure:
                self.fault(run, f"{sample}: {figure} was shown after act {count},"
                                f" the disk says {fold(events[:count], rinse)}")


def play(driver, path, said, run, delay_s, after_first_line):
    """Starts the driver, kills it; what it said. None where it ended by itself."""
    with open(said, "wb") as out:
        process = subprocess.Popen([driver, path, str(run)], stdout=out, stderr=subprocess.PIPE)
    if after_first_line:
        give_up = time.monotonic() + FIRST_LINE_S
        while os.path.getsize(said) == 0 and process.poll() is None and time.monotonic() < give_up:
            time.sleep(0.001)
    time.sleep(delay_s)
    process.send_signal(signal.SIGKILL)
    trouble = process.communicate()[1].decode(errors="replace")
    with open(said, encoding="utf-8") as file:
        text = file.read()
    if process.returncode != -signal.SIGKILL or (after_first_line and not text):
        print(f"The driver ended by itself or said nothing ({process.returncode}): {trouble}")
        return None
    return text


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("driver")
    parser.add_argument("--kills", type=int, default=max(200, int(os.environ.get("HALFCUP_KILLS", "0")) // 7))
    arguments = parser.parse_args()
    chance = random.Random(SEED)
    started = time.monotonic()
    with tempfile.TemporaryDirectory() as folder:
        os.environ["TMPDIR"] = folder  # what a killed one leaves behind goes with it
        path = os.path.join(folder, "halfcup.db")
        judge = Judge(path)
        in_wash = 0
        run = 0
        while in_wash < arguments.kills:
            opening = run % 11 == 10
            delay = chance.uniform(0.0, 0.12) if opening else chance.uniform(0.005, 0.150)
            text = play(arguments.driver, path, os.path.join(folder, "said"), run, delay, not opening)
            if text is None:
                return 1
            in_wash += not opening
            judge.take(run, text)
            judge.look(run)
            run += 1
        judge.look(run, everything=True)
        size = os.path.getsize(path)
    for fault in judge.faults[:40]:
        print(fault)
    print(f"{run} kills, {in_wash} of them in a wash; {judge.resumes} drafts resumed, {len(judge.step)} washes,"
          f" {len(judge.finished)} finished, {judge.taps} acts of counting acknowledged,"
          f" {len(judge.faults)} faults; database {size // 1024} KiB, {time.monotonic() - started:.0f} s.")
    if judge.resumes < in_wash // 4 or judge.taps < 5 * in_wash or not judge.finished:
        print("Too little was played for the kills to mean anything.")
        return 1
    return 1 if judge.faults else 0


if __name__ == "__main__":
    sys.exit(main())
