#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""The demo and the tour never take the place of a keeper's records.

keeps_records_test.py PROGRAM
"""
import os
import sqlite3
import subprocess
import sys
import tempfile

PROGRAM = sys.argv[1]


def run(folder, *arguments):
    environment = dict(os.environ, HOME=folder, XDG_DATA_HOME=folder + "/data", QT_QPA_PLATFORM="offscreen")
    done = subprocess.run([PROGRAM, *arguments], env=environment, timeout=90, capture_output=True, text=True)
    assert done.returncode == 0, f"{arguments} ended with {done.returncode}: {done.stderr}"


def names(path):
    with sqlite3.connect(path) as database:
        return {name for (name,) in database.execute("SELECT name FROM yard")}


def records_of_a_keeper(folder, path):
    run(folder, "--self-test", "--database", path)
    with sqlite3.connect(path) as database:
        database.execute("INSERT INTO yard(id, name, demo, removed) VALUES ('mine', 'My own yard', 0, 0)")


with tempfile.TemporaryDirectory() as folder:
    own = os.path.join(folder, "own.db")
    records_of_a_keeper(folder, own)
    run(folder, "--demo", "--self-test", "--database", own)
    assert "My own yard" in names(own), "the demo took the place of the keeper's records"
    assert "Alder Bend" in names(own), "the demo was not loaded beside them"

    kept = os.path.join(folder, "halfcup.db")  # as the program itself names it
    records_of_a_keeper(folder, kept)
    run(folder, "--tour", folder)
    assert names(kept) == {"My own yard"}, "the tour touched the keeper's records"
print("own records kept beside the demo and the tour")
