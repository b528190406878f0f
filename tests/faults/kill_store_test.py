#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""Kills the store in the middle of five journeys and looks with other eyes at what is on the disk.

usage: kill_store_test.py DRIVER SCHEMAS [JOURNEY...]

The driver (kill_store.cpp) says each act after the store returned. SIGKILL falls at a random microsecond after
one of its first acts, or while it still starts. HALFCUP_KILLS says how many kills there are over all journeys, a
seventh each, two for the migrations, and one for the wash (kill_wash_test.py). What is checked is read with
Python's own sqlite3. SIGKILL ends the program, not the system: what a dead battery does is SQLite's promise.
"""

import glob
import os
import random
import shutil
import signal
import sqlite3
import subprocess
import sys
import tempfile
import time

JOURNEYS = ["treatment", "tray", "merge", "restore", "migration"]
SEED = 20260615
# A kill falls so long after an act that was drawn by lot: waiting for the act makes a busy machine kill no
# earlier in the journey. A restore, which makes and checks three databases, takes longer than anything else.
LONGEST_S = {"restore": 0.3}
MOST_ACTS = {"restore": 2, "merge": 4, "migration": 4}
DRIVER, SCHEMAS = sys.argv[1:3]
KILLS = max(1, int(os.environ.get("HALFCUP_KILLS", "175")) // 7)


def copied(path):
    """A copy to look at: the log a kill left behind is for the program itself to take up."""
    copy = path + ".looked-at"
    for ending in ("", "-wal"):
        if os.path.exists(copy + ending):
            os.remove(copy + ending)
        if os.path.exists(path + ending):
            shutil.copyfile(path + ending, copy + ending)
    return sqlite3.connect(copy)


def lines_in(path):
    with open(path, "rb") as file:
        return file.read().count(b"\n")


def kill(journey, folder, run, delay, after_lines):
    said = os.path.join(folder, "said")
    with open(said, "wb") as out:
        process = subprocess.Popen([DRIVER, journey, folder, str(run)], stdout=out, stderr=subprocess.PIPE)
    give_up = time.monotonic() + 60
    while lines_in(said) < after_lines and process.poll() is None and time.monotonic() < give_up:
        time.sleep(0.0005)
    end = time.perf_counter() + delay
    while time.perf_counter() < end:
        if end - time.perf_counter() > 0.002:
            time.sleep(0.001)
    process.send_signal(signal.SIGKILL)
    trouble = process.communicate()[1].decode(errors="replace")
    if process.returncode != -signal.SIGKILL:
        raise SystemExit(f"{journey}: the driver ended by itself ({process.returncode}): {trouble}")
    with open(said, encoding="utf-8") as file:
        lines = file.read().split("\n")
    lines.pop()  # empty, or cut off in the middle of a line
    return [line.split() for line in lines]


class Journey:
    """What was acknowledged on one database so far."""

    def __init__(self, name, folder):
        self.name, self.folder = name, folder
        self.path = os.path.join(folder, "halfcup.db")
        self.faults, self.acts, self.all_acts = [], 0, 0
        self.treated, self.jars, self.counts, self.finished, self.own = {}, {}, {}, set(), set()
        self.taken, self.restored, self.asides, self.expected = False, None, set(), None

    def fault(self, run, text):
        self.faults.append(f"{self.name}, kill {run}: {text}")

    def take(self, lines):
        for word, *rest in lines:
            self.acts += word != "open"
            if word in ("treated", "removed"):
                self.treated[rest[0]] = (rest[1], int(rest[2]), word == "removed")
            elif word == "jar":
                self.jars[rest[0]] = rest[1]
            elif word == "counted":
                self.counts[rest[0]] = int(rest[1])
            elif word == "finished":
                self.finished.add(rest[0])
            elif word == "own":
                self.own.add(rest[0])
            elif word == "taken":
                self.taken = True
            elif word == "restored":
                self.restored = rest[0]
                self.own = set()  # those before it are in the one kept aside
                if rest[1] != "-":
                    self.asides.add(rest[1])

    def look(self, run):
        if not os.path.exists(self.path):
            if self.acts:
                self.fault(run, "there is no database")
            return
        database = copied(self.path)
        try:
            if not database.execute("SELECT 1 FROM sqlite_master WHERE name = 'sample'").fetchone():
                if self.acts:
                    self.fault(run, "there are no tables")
                return
            if (verdict := database.execute("PRAGMA integrity_check").fetchone()[0]) != "ok":
                self.fault(run, f"integrity check: {verdict}")
            if strays := database.execute("PRAGMA foreign_key_check").fetchall():
                self.fault(run, f"rows that point nowhere: {strays}")
            getattr(self, "look_at_" + self.name)(run, database)
        finally:
            database.close()

    def look_at_treatment(self, run, database):
        for treatment, (batch, colonies, removed) in self.treated.items():
            row = database.execute("SELECT batch, removed_on FROM treatment WHERE id = ?", (treatment,)).fetchone()
            if row is None or row[0] != batch or (removed and row[1] != "2026-06-20"):
                self.fault(run, f"treatment {batch} is {row}")
                continue
            there = database.execute("SELECT count(*) FROM treated WHERE treatment_id = ? AND removed = 0",
                                     (treatment,)).fetchone()[0]
            # Where the second save was not acknowledged it may still be there: then whole.
            if there != (1 if row[1] else colonies):
                self.fault(run, f"treatment {batch} has {there} colonies, removed on {row[1]}")

    def look_at_tray(self, run, database):
        for jar, label in self.jars.items():
            row = database.execute("SELECT jar, state FROM sample WHERE id = ?", (jar,)).fetchone()
            if row is None or row[0] != label or (jar in self.finished and row[1] != "finished"):
                self.fault(run, f"jar {label} is {row}")
        for jar, count in self.counts.items():
            there = database.execute("SELECT count(*) FROM count_event WHERE sample_id = ?", (jar,)).fetchone()[0]
            if there < count:
                self.fault(run, f"{count} acts of counting were acknowledged, {there} are there")

    def look_at_merge(self, run, database):
        self.look_for_own(run, database)
        yards = database.execute("SELECT count(*) FROM yard WHERE name LIKE 'Other %'").fetchone()[0]
        colonies = database.execute("SELECT count(*) FROM colony c JOIN yard y ON y.id = c.yard_id"
                                    " WHERE y.name LIKE 'Other %'").fetchone()[0]
        if (yards, colonies) not in [(6, 48)] + ([] if self.taken else [(0, 0)]):
            self.fault(run, f"{yards} yards and {colonies} colonies were taken in")

    def look_at_restore(self, run, database):
        names = {row[0] for row in database.execute("SELECT name FROM yard")} - {"Own"}
        if len(names) != 1 or not names <= {"one", "two"}:
            self.fault(run, f"neither of the two backups: {names}")
        for aside in self.asides:
            if sqlite3.connect(aside).execute("PRAGMA integrity_check").fetchone()[0] != "ok":
                self.fault(run, f"{aside} is not whole")
        if not self.restored:
            return
        # What was acknowledged is there; or aside, where the next restore had taken its place and could not say so. That one
        # may be of the same file: each run begins with the first.
        there = {row[0] for row in database.execute("SELECT id FROM yard")} if names == {self.restored} else set()
        for aside in glob.glob(self.path + ".before-restore-*"):
            if not aside.endswith(("-wal", "-shm", "-journal")):
                there |= {row[0] for row in sqlite3.connect(aside).execute("SELECT id FROM yard")}
        if lost := self.own - there:
            self.fault(run, f"neither there nor kept aside: {lost}")

    def look_at_migration(self, run, database):
        self.look_for_own(run, database)
        if values_of(database, self.expected) != self.expected:
            self.fault(run, "values of the earlier schema have changed")

    def look_for_own(self, run, database):
        there = {row[0] for row in database.execute("SELECT id FROM yard")}
        if lost := self.own - there:
            self.fault(run, f"yards are lost: {lost}")


def values_of(database, like=None):
    """Every value of a database by table, column and key; or those that another one has."""
    tables = like.keys() if like else [
        (table, *columns) for table, columns in (
            (table, [row[1] for row in database.execute(f"PRAGMA table_info({table})")])
            for (table,) in database.execute("SELECT name FROM sqlite_master WHERE type = 'table'").fetchall())]
    values = {}
    for table, *columns in tables:
        wanted = set(like[(table, *columns)]) if like else None
        rows = {tuple(row) for row in database.execute(f"SELECT {', '.join(columns)} FROM {table}")}
        values[(table, *columns)] = rows & wanted if like else rows
    return values


def play(name, folder, chance):
    journey = Journey(name, folder)
    run = 0
    for number in range(KILLS):
        if name == "migration" or (name == "merge" and number % 5 == 0) or (name == "restore" and number % 8 == 0):
            for path in glob.glob(os.path.join(folder, "halfcup.db*")):
                os.remove(path)
            faults, all_acts = journey.faults, journey.all_acts + journey.acts
            journey = Journey(name, folder)
            journey.faults, journey.all_acts = faults, all_acts
        if name == "migration":
            shutil.copyfile(os.path.join(SCHEMAS, f"schema_{1 + number % 5}.db"), journey.path)
            os.chmod(journey.path, 0o600)
            database = sqlite3.connect(f"file:{journey.path}?mode=ro&immutable=1", uri=True)
            journey.expected = values_of(database)
            database.close()
        starting = number % 10 == 9
        for _ in range(2 if name == "migration" else 1):  # the second one takes up what the first left
            delay = chance.uniform(0, 0.03 if starting else LONGEST_S.get(name, 0.02))
            after_lines = 0 if starting else 1 + chance.randint(0, MOST_ACTS.get(name, 8))  # the first is "open"
            lines = kill(name, folder, run, delay, after_lines)
            journey.take(lines)
            journey.look(run)
            run += 1
    journey.all_acts += journey.acts
    return journey, run


def main():
    chance = random.Random(SEED)
    failed = False
    with tempfile.TemporaryDirectory() as folder:
        os.environ["TMPDIR"] = folder  # what a killed one leaves behind goes with it
        for name in sys.argv[3:] or JOURNEYS:
            place = os.path.join(folder, name)
            os.mkdir(place)
            subprocess.run([DRIVER, "prepare", place, "0"], check=True, timeout=60)
            started = time.monotonic()
            journey, kills = play(name, place, chance)
            for fault in journey.faults[:20]:
                print(fault)
            failed = failed or bool(journey.faults)
            if journey.all_acts < kills // 2:
                print("Too little was done for the kills to mean anything.")
                failed = True
            print(f"{name}: {kills} kills, {journey.all_acts} acts acknowledged, {len(journey.faults)} faults,"
                  f" {time.monotonic() - started:.0f} s.",
                  flush=True)
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
