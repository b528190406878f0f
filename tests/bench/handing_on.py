#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""How long handing on takes, beside what the database's own shell needs for the same rows, in one run.

handing_on.py path/to/halfcup-desk DATABASE RUNS
Prints each step's seconds and peak memory, and as its last line the medians as JSON. Dump and import are sqlite3's, of
the same rows as CSV, into the same tables with the same keys and indexes.
"""
import json
import os
import pathlib
import sqlite3
import statistics
import subprocess
import sys
import tempfile
import time

TABLES = ("revision", "count_event", "yard", "colony", "sample")


def run(what, command, **more):
    begun = time.monotonic()
    process = subprocess.Popen(command, **more)
    _, status, usage = os.wait4(process.pid, 0)
    process.returncode = os.waitstatus_to_exitcode(status)
    seconds = time.monotonic() - begun
    print(f"{what:<42} {seconds:8.2f} s  {usage.ru_maxrss / 1024:7.1f} MB", flush=True)
    if process.returncode != 0:
        raise SystemExit(f"{command[0]} ended with {process.returncode}")
    return seconds


def once(desk, full, root):
    empty, other = root / "empty.db", root / "other.db"
    file = root / "all.halfcup"
    for path in (empty, other, file):
        for ending in ("", "-wal", "-shm", ".before-merge"):
            pathlib.Path(f"{path}{ending}").unlink(missing_ok=True)
    took = {"export": run("export", [desk, "export", "--as", "exchange", str(full), str(file)]), "dump": 0}
    for table in TABLES:
        with open(root / f"{table}.csv", "wb") as out:
            took["dump"] += run(f"  sqlite3 dumps {table}", ["sqlite3", "-csv", str(full), f"SELECT * FROM {table}"],
                                stdout=out)
    empty.touch()
    took["merge"] = run("merge into empty", [desk, "merge", str(empty), str(file)], stdout=subprocess.DEVNULL)
    took["import"] = import_all(full, other, root)
    for table in TABLES:  # all of it was handed on
        counts = {sqlite3.connect(path).execute(f"SELECT count(*) FROM {table}").fetchone()[0]
                  for path in (full, empty, other)}
        if len(counts) != 1:
            raise SystemExit(f"{table}: not the same number of rows everywhere: {counts}")
    return took


def main():
    desk, full, runs = sys.argv[1], pathlib.Path(sys.argv[2]), int(sys.argv[3])
    with tempfile.TemporaryDirectory(prefix="halfcup-bench-") as name:
        took = [once(desk, full, pathlib.Path(name)) for _ in range(runs)]
    print(json.dumps({name: statistics.median(one[name] for one in took) for name in took[0]}))
    return 0


def import_all(full, other, root):
    """By the shell, into the same tables with the same keys and indexes. Not STRICT ones: the shell gives every empty
    cell as a text. The tables in the order in which nothing points nowhere."""
    schema = "".join(
        text.replace("STRICT, ", "").replace("STRICT", "") + ";\n" for (text,) in sqlite3.connect(full).execute(
            "SELECT sql FROM sqlite_master WHERE sql IS NOT NULL AND tbl_name IN (%s)"
            % ",".join("?" * len(TABLES)), TABLES))
    script = schema + "".join(f".import --csv {root / (table + '.csv')} {table}\n" for table in reversed(TABLES))
    begun = time.monotonic()
    done = subprocess.run(["sqlite3", str(other)], input=script, text=True, check=False, capture_output=True)
    seconds = time.monotonic() - begun
    if done.returncode != 0 or done.stderr:
        raise SystemExit(f"sqlite3 could not import: {done.stderr[:400]}")
    print(f"{'  sqlite3 imports all of them':<42} {seconds:8.2f} s", flush=True)
    return seconds


if __name__ == "__main__":
    sys.exit(main())
