#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""halfcup-desk backup, restore and check, on a real database made from the demo season.

desk_backup.py PROGRAM

The hash of a backup is worked out here a second time, from the description in cpp/store/content_hash.h, with Python's
own sqlite3 and hashlib: a second reader of the format.
"""

import csv
import hashlib
import io
import os
import pathlib
import re
import sqlite3
import struct
import subprocess
import sys
import tempfile
import unittest

PROGRAM = sys.argv.pop(1)
NOBODY = 65534


def call(*words):
    done = subprocess.run([PROGRAM, *map(str, words)], capture_output=True, timeout=100, check=False)
    return done.returncode, done.stdout.decode(), done.stderr.decode()


def opened(path):
    connection = sqlite3.connect(f"file:{path}?mode=ro", uri=True)
    connection.text_factory = bytes
    return connection


def part(value):
    if value is None:
        return b"n"
    if isinstance(value, int):
        return b"i" + struct.pack(">q", value)
    if isinstance(value, float):
        return b"r" + struct.pack(">d", value)
    return b"t" + struct.pack(">Q", len(value)) + value


def hash_of(path):
    """As cpp/store/content_hash.h describes it. There is no blob in our databases."""
    connection = opened(path)
    digest = hashlib.sha256()
    ours = "name NOT LIKE 'sqlite\\_%' ESCAPE '\\'"
    for row in connection.execute(f"SELECT type, name, tbl_name, sql FROM sqlite_master WHERE {ours} ORDER BY type, name"):
        digest.update(b"S" + b"".join(map(part, row)))
    tables = [row[0].decode() for row in
              connection.execute(f"SELECT name FROM sqlite_master WHERE type = 'table' AND {ours} ORDER BY name")]
    for table in tables:
        digest.update(b"T" + part(table.encode()))
        key = [row[1].decode() for row in sorted(connection.execute(f"PRAGMA table_info({table})"), key=lambda r: r[5])
               if row[5] > 0]
        but = " WHERE name <> 'sha256'" if table == "backup_note" else ""
        for row in connection.execute(f"SELECT * FROM {table}{but} ORDER BY {', '.join(key)}"):
            digest.update(b"R" + b"".join(map(part, row)))
    connection.close()
    return digest.hexdigest()


class Backup(unittest.TestCase):
    def setUp(self):
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.folder = pathlib.Path(folder.name)
        self.database = self.folder / "keeper.db"
        self.backup = self.folder / "one.halfcup-backup"
        self.assertEqual(call("demo", self.database, "--until", "2026-05-17")[0], 0)

    def done(self, *words):
        code, out, err = call(*words)
        self.assertEqual((code, err), (0, ""), (words, err))
        return out

    def checked(self, path):
        return {row["what"]: row["value"] for row in
                csv.DictReader(io.StringIO(self.done("check", path), newline=""), strict=True)}

    def ask(self, path, question):
        connection = opened(path)
        try:
            return connection.execute(question).fetchone()[0]
        finally:
            connection.close()

    def names(self):
        return sorted(path.name for path in self.folder.iterdir())

    def test_a_backup_read_by_others(self):
        out = self.done("backup", self.database, self.backup)
        self.assertEqual(self.names(), ["keeper.db", "one.halfcup-backup"])  # nothing was left beside them
        washes = self.ask(self.database, "SELECT count(*) FROM sample WHERE state = 'finished'")
        self.assertIn(f"holds 2 yards, 9 colonies, {washes} finished washes, ", out)
        self.assertEqual(os.stat(self.backup).st_mode & 0o7777, 0o600)
        noted = self.ask(self.backup, "SELECT value FROM backup_note WHERE name = 'sha256'").decode()
        self.assertEqual(hash_of(self.backup), noted)
        found = self.checked(self.backup)
        self.assertEqual((found["kind"], found["sha256"]), ("backup", noted))
        self.assertEqual(found["newest_wash"], self.ask(
            self.database, "SELECT max(date(started_at_ms / 1000 + utc_offset_min * 60, 'unixepoch')) FROM sample"
            " WHERE state = 'finished'").decode())
        for what, value in found.items():
            if what.startswith("rows ") and what != "rows backup_note":
                self.assertEqual(int(value), self.ask(self.backup, f"SELECT count(*) FROM {what[5:]}"))
        self.assertGreater(int(found["rows count_event"]), 0)
        self.assertEqual(self.checked(self.database)["kind"], "database")

    def test_back_to_what_was(self):
        self.done("backup", self.database, self.backup)
        before = self.ask(self.database, "SELECT count(*) FROM sample")
        self.done("demo", self.database)  # the rest of the season
        after = self.ask(self.database, "SELECT count(*) FROM sample")
        self.assertGreater(after, before)
        out = self.done("restore", self.backup, self.database)
        aside = pathlib.Path(re.search(r"is kept as (.+)", out)[1])
        self.assertRegex(aside.name, r"^keeper\.db\.before-restore-\d{8}-\d{6}$")
        self.assertEqual(self.ask(self.database, "SELECT count(*) FROM sample"), before)
        self.assertEqual(self.ask(aside, "SELECT count(*) FROM sample"), after)
        identity = "SELECT value FROM setting WHERE name = 'device_id'"
        self.assertNotEqual(self.ask(self.database, identity), self.ask(self.backup, identity))
        self.assertIn("due_on", self.done("due", self.database, "--on", "2026-05-18"))
        self.done("restore", aside, self.database)  # and that can be taken back
        self.assertEqual(self.ask(self.database, "SELECT count(*) FROM sample"), after)
        self.done("restore", self.backup, self.folder / "new phone.db")
        self.assertEqual(self.ask(self.folder / "new phone.db", "SELECT count(*) FROM sample"), before)

    def test_what_is_refused(self):
        self.done("backup", self.database, self.backup)
        whole = self.backup.read_bytes()
        files = {"cut.halfcup-backup": (whole[: len(whole) // 2], "its end is missing"),
                 "changed.halfcup-backup": (whole.replace(b"Alder Bend", b"Older Bend"), "it is damaged"),
                 "letter.txt": (b"Dear keeper,\n" * 100, "neither a backup nor a database"),
                 "nothing": (b"", "it is empty")}
        for name, (content, says) in files.items():
            (self.folder / name).write_bytes(content)
            for words in (("check", self.folder / name), ("restore", self.folder / name, self.database)):
                code, out, err = call(*words)
                self.assertEqual((code, out), (1, ""), words)
                self.assertIn(says, err)
        database = self.database.read_bytes()
        for words, code, says in (
            (("backup", self.database), 2, "Which database"),
            (("backup", self.folder / "none.db", self.folder / "x"), 1, "There is no database"),
            (("backup", self.database, self.backup), 1, "already"),
            (("backup", self.database, self.folder / "gone" / "x"), 1, "the folder is not there"),
            (("restore", self.backup), 2, "Which backup"),
            (("restore", self.database, self.database), 1, "it is the database itself"),
            (("restore", self.folder, self.database), 1, "it is no file"),
            (("restore", self.backup, self.folder / "letter.txt"), 1, "another program"),
            (("check",), 2, "Which database"),
            (("check", self.folder / "none"), 1, "no such file"),
        ):
            got, out, err = call(*words)
            self.assertEqual((got, out), (code, ""), (words, err))
            self.assertIn(says, err)
        self.assertEqual(self.database.read_bytes(), database)
        self.assertEqual(self.backup.read_bytes(), whole)
        self.assertEqual(self.names(), sorted(["keeper.db", "one.halfcup-backup", *files]))

    def test_a_program_that_has_it_open(self):
        self.done("backup", self.database, self.backup)
        holder = sqlite3.connect(self.database)
        holder.execute("SELECT count(*) FROM yard").fetchone()
        code, _, err = call("restore", self.backup, self.database)
        self.assertEqual(code, 1)
        self.assertIn("another program has the database open", err)
        self.assertEqual(holder.execute("SELECT count(*) FROM yard").fetchone(), (2,))
        holder.close()

    def test_a_database_that_points_nowhere(self):
        connection = sqlite3.connect(self.database)
        connection.execute("UPDATE colony SET yard_id = 'gone'")
        connection.commit()
        connection.close()
        code, _, err = call("check", self.database)
        self.assertEqual(code, 1)
        self.assertIn("points nowhere", err)


if __name__ == "__main__":
    unittest.main()
