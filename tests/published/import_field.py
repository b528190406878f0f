#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""437 published washes taken in as a table: every one is kept, and has the answer that `assess` gives for its counts.

usage: import_field.py HALFCUP-DESK SHARED-FOLDER

Source: Aurell, Bruckner, Steury & Williams 2025, J Econ Entomol, doi 10.1093/jee/toaf126 (data doi 10.5281/zenodo.15733143,
CC-BY-4.0). Its days are numbers of a study in Alabama from March 2022; here day 1 is taken as 1 March.
"""

import csv
import datetime
import io
import pathlib
import sqlite3
import subprocess
import sys
import tempfile

DESK, SHARED = sys.argv[1], pathlib.Path(sys.argv[2])
FIELD = SHARED / "field" / "washes-2022.csv"
if not FIELD.exists():
    print("Skipped: the published washes are not beside the project.")
    sys.exit(77)

with open(FIELD, encoding="utf-8", newline="") as file:
    rows = list(csv.DictReader(file))
assert len(rows) == 437, len(rows)

day_one = datetime.date(2022, 3, 1)
shapes = {"iso.csv": (",", lambda day: day.isoformat(), "utf-8"),
          "points.csv": (";", lambda day: f"{day.day}.{day.month}.{day.year}", "utf-16"),
          "american.csv": ("\t", lambda day: day.strftime("%m/%d/%Y"), "cp1252")}

told = subprocess.run([DESK, "assess"], capture_output=True, text=True, timeout=60, check=True,
                      input="mites,bees,bees_cv,line\n" + "".join(f"{r['mites']},{r['bees_counted']},0.1,3\n" for r in rows))
answers = list(csv.DictReader(io.StringIO(told.stdout)))
expected = {}
for row, answer in zip(rows, answers, strict=True):
    key = (row["yard"], row["colony"], int(row["day"]), int(row["mites"]), float(row["bees_counted"]))
    expected.setdefault(key, []).append(answer)

dumps = []
with tempfile.TemporaryDirectory() as place:
    for name, (separator, write, code) in shapes.items():
        table, database = pathlib.Path(place) / name, pathlib.Path(place) / (name + ".db")
        with open(table, "w", encoding=code, newline="") as file:
            out = csv.writer(file, delimiter=separator)
            out.writerow(["Colony", "Yard", "Date", "Mites", "Bees counted"])
            for row in rows:
                day = day_one + datetime.timedelta(days=int(row["day"]) - 1)
                out.writerow([row["colony"], row["yard"], write(day), row["mites"], row["bees_counted"]])
        done = subprocess.run([DESK, "import", database, table, "--questions", "keep"], capture_output=True, text=True,
                              timeout=120, check=False)
        assert (done.returncode, done.stderr) == (0, ""), (done.stdout, done.stderr)
        assert "437 washes kept" in done.stdout and "0 refused" in done.stdout, done.stdout
        with sqlite3.connect(database) as records:
            records.row_factory = sqlite3.Row
            kept = [dict(row) for row in records.execute(
                "SELECT s.*, c.label, y.name AS yard FROM sample s JOIN colony c ON c.id = s.colony_id "
                "JOIN yard y ON y.id = s.yard_id ORDER BY s.id")]
        assert len(kept) == 437, len(kept)
        largest = 0.0
        for wash in kept:
            day = datetime.datetime.fromtimestamp(wash["started_at_ms"] / 1000, datetime.timezone.utc).date()
            key = (wash["yard"], wash["label"], (day - day_one).days + 1, wash["mites"], wash["bees_mean"])
            answer = expected[key][0]
            for column in ("load_q05", "load_q50", "load_q95", "chance_over"):
                theirs = float(answer[column])
                largest = max(largest, abs(wash[column] - theirs) / max(abs(theirs), 1e-6))
        # The calculator writes ten digits.
        assert largest < 1e-8, largest
        dumps.append([{key: value for key, value in wash.items() if key != "note"} for wash in kept])
        print(f"{name}: 437 washes, largest difference from the calculator {largest:.1e}")
assert dumps[0] == dumps[1] == dumps[2], "one table in three dialects makes three different sets of records"
