#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""How long handing on takes, beside what the database's own shell needs for the same rows, in one run.

handing_on.py path/to/halfcup-desk path/to/handing_on_make [SAMPLES]
Writes each step's seconds and peak memory, and the ratios the goals are about: export at most 1.5 times sqlite3's CSV
dump of the same rows, merge into an empty database at most 4 times sqlite3's import of them, memory under 150 MB.
"""
import os
import pathlib
import sqlite3
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


def main():
    desk, make = sys.argv[1:3]
    samples = sys.argv[3] if len(sys.argv) > 3 else "100000"
    with tempfile.TemporaryDirectory(prefix="halfcup-bench-") as name:
        root = pathlib.Path(name)
        full, empty, other = (root / name for name in ("full.db", "empty.db", "other.db"))
        file = root / "all.halfcup"
        run(f"{samples} samples made", [make, str(full), samples])
        exported = run("export", [desk, "export", "--as", "exchange", str(full), str(file)])
        dumped = 0
        for table in TABLES:
            with open(root / f"{table}.csv", "wb") as out:
                dumped += run(f"  sqlite3 dumps {table}",
                              ["sqlite3", "-csv", str(full), f"SELECT * FROM {table}"], stdout=out)
        empty.touch()
        merged = run("merge into empty", [desk, "merge", str(empty), str(file)], stdout=subprocess.DEVNULL)
        run("merge again", [desk, "merge", str(empty), str(file)], stdout=subprocess.DEVNULL)
        imported = import_all(full, other, root)
        print(f"file {file.stat().st_size / 1e6:.0f} MB, database {full.stat().st_size / 1e6:.0f} MB")
        print(f"export / dump {exported / dumped:.2f} (goal 1.5), merge / import {merged / imported:.2f} (goal 4)")
        for database in (empty, other):
            for table in TABLES:
                count = subprocess.run(["sqlite3", str(database), f"SELECT count(*) FROM {table}"], check=True,
                                       capture_output=True, text=True).stdout.strip()
                print(f"{database.name} {table} {count}")
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
