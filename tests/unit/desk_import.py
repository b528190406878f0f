#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""halfcup-desk import on real files, looked at with Python's own csv and sqlite3. usage: desk_import.py PROGRAM

The tables are those of tests/unit/tables, what gnumeric's ssconvert makes of them, and hostile ones.
"""

import csv
import os
import pathlib
import shutil
import sqlite3
import subprocess
import sys
import tempfile
import unittest

PROGRAM = sys.argv.pop(1)
TABLES = pathlib.Path(__file__).parent / "tables"


def call(*words):
    done = subprocess.run([PROGRAM, "import", *map(str, words)], capture_output=True, timeout=120, check=False)
    return done.returncode, done.stdout.decode(), done.stderr.decode()


def washes(database):
    with sqlite3.connect(f"file:{database}?mode=ro", uri=True) as records:
        records.row_factory = sqlite3.Row
        return [dict(row) for row in records.execute(
            "SELECT s.*, c.label, y.name AS yard FROM sample s JOIN colony c ON c.id = s.colony_id "
            "JOIN yard y ON y.id = s.yard_id ORDER BY s.started_at_ms, c.label, s.id")]


class Import(unittest.TestCase):
    def setUp(self):
        self.place = tempfile.TemporaryDirectory()
        self.folder = pathlib.Path(self.place.name)
        self.database = self.folder / "keeper.db"

    def tearDown(self):
        self.place.cleanup()

    def write(self, name, data):
        path = self.folder / name
        path.write_bytes(data if isinstance(data, bytes) else data.encode())
        return path

    def test_a_table_of_an_office(self):
        code, out, err = call(self.database, TABLES / "office-de.csv")
        self.assertEqual((code, err), (0, ""))
        self.assertIn("4 washes kept, 1 new yard, 3 new colonies, 0 here already, 0 in question, 0 refused.", out)
        self.assertIn("Windows-1252", out)
        with open(TABLES / "office-de.csv", encoding="cp1252", newline="") as file:
            theirs = sorted((row["Volk"], int(row["Milbenzahl"])) for row in csv.DictReader(file, delimiter=";"))
        self.assertEqual(sorted((wash["label"], wash["mites"]) for wash in washes(self.database)), theirs)
        before = washes(self.database)
        code, out, _ = call(self.database, TABLES / "office-de.csv")
        self.assertEqual(code, 0)
        self.assertIn("0 washes kept, 0 new yards, 0 new colonies, 4 here already", out)
        self.assertEqual(washes(self.database), before)

    def test_a_new_database_is_its_owners_alone(self):
        before = os.umask(0o022)  # as most systems have it: without more, all may read a new file
        try:
            self.assertEqual(call(self.database, TABLES / "office-de.csv")[0], 0)
        finally:
            os.umask(before)
        self.assertEqual(oct(self.database.stat().st_mode & 0o7777), oct(0o600))

    def test_a_spreadsheet_writes_it_in_its_own_ways(self):
        converter = shutil.which("ssconvert")
        if not converter:
            self.skipTest("ssconvert (Debian's package gnumeric) is not here")
        rows = [["Date", "Yard", "Hive", "Bees", "Mites", "Notes"],
                ["2023-05-18", "Mühlgarten", "4", "300", "9", "says \"so\", he"],
                ["2023-06-03", "Mühlgarten", "7", "310", "0", "Größe"],
                ["2023-07-01", "Les Tilleuls", "A1", "295", "12", ""]]
        source = self.folder / "source.csv"
        with open(source, "w", encoding="utf-8", newline="") as file:
            csv.writer(file).writerows(rows)
        subprocess.run([converter, source, self.folder / "sheet.ods"], check=True, capture_output=True, timeout=60)
        shapes = {"semicolon.csv": "separator=; format=preserve charset=WINDOWS-1252",
                  "tab.txt": "separator='\t' format=preserve charset=UTF-16",
                  "quoted.csv": "separator=, format=preserve quoting-mode=always charset=UTF-8"}
        found = {}
        for name, shape in shapes.items():
            table, database = self.folder / name, self.folder / (name + ".db")
            subprocess.run([converter, "-T", "Gnumeric_stf:stf_assistant", "-O", shape, self.folder / "sheet.ods", table],
                           check=True, capture_output=True, timeout=60)
            code, out, err = call(database, table)
            self.assertEqual((code, err), (0, ""), out)
            found[name] = [{key: value for key, value in wash.items() if key != "note"} for wash in washes(database)]
            self.assertEqual([(wash["yard"], wash["label"], wash["bees_mean"], wash["mites"])
                              for wash in found[name]], [(r[1], r[2], float(r[3]), int(r[4])) for r in rows[1:]])
        self.assertEqual(found["semicolon.csv"], found["tab.txt"])  # ids and answers, too
        self.assertEqual(found["semicolon.csv"], found["quoted.csv"])
        code, _, err = call(self.database, self.folder / "sheet.ods")
        self.assertEqual(code, 1)
        self.assertIn("Save it there as CSV", err)

    def test_questions_are_asked_and_nothing_is_kept_before(self):
        code, out, err = call(self.database, TABLES / "club.csv", "--yard", "Club yard")
        self.assertEqual((code, err), (1, ""))
        self.assertIn("Line 5: in question: 400 mites on 300 bees: are the two swapped?", out)
        self.assertIn("Line 9: refused: the day 1980-06-20 is before 1990.", out)
        self.assertIn("Nothing was written.", out)
        self.assertEqual(washes(self.database), [])
        code, out, _ = call(self.database, TABLES / "club.csv", "--yard", "Club yard", "--questions", "leave")
        self.assertEqual(code, 1)  # some rows were refused
        self.assertIn("3 washes kept", out)
        code, out, _ = call(self.database, TABLES / "club.csv", "--yard", "Club yard", "--questions", "keep")
        self.assertIn("3 washes kept, 0 new yards", out)
        self.assertEqual(len(washes(self.database)), 6)

    def test_matching_and_days(self):
        table = self.write("t.csv", "a,b,c\n05/06/2024,K1,3\n07/08/2024,K2,0\n")
        code, _, err = call(self.database, table)
        self.assertEqual(code, 2)
        self.assertIn("Which column holds the day? Say so with --match or --yard.", err)
        match = ["--match", "day=a,colony=#2,mites=c", "--yard", "Home"]
        code, _, err = call(self.database, table, *match)
        self.assertEqual(code, 2)
        self.assertIn("can be read in two ways", err)
        self.assertFalse(self.database.exists())
        code, out, err = call(self.database, table, *match, "--dates", "m/d/y", "--dry-run", "yes")
        self.assertEqual((code, err), (0, ""))
        self.assertIn("2 washes to keep, 1 new yard, 2 new colonies", out)
        self.assertFalse(self.database.exists())
        code, out, _ = call(self.database, table, *match, "--dates", "m/d/y")
        self.assertEqual(code, 0)
        self.assertEqual([wash["started_at_ms"] for wash in washes(self.database)],
                         [1714996800000, 1720440000000])  # noon of 6 May and 8 July 2024, by date -u
        for wrong in (["--match", "honey=a"], ["--match", "day=z"], ["--match", "day"], ["--match", "day=#4"],
                      ["--dates", "y.d.m"], ["--dry-run", "perhaps"], ["--questions", "both"]):
            code, out, err = call(self.database, table, *wrong)
            self.assertEqual((code, out), (2, ""), wrong)
            self.assertTrue(err.startswith("halfcup-desk import: --"), err)

    def test_an_export_of_this_app_comes_back(self):
        demo = self.folder / "demo.db"
        subprocess.run([PROGRAM, "demo", demo], check=True, capture_output=True, timeout=60)
        with sqlite3.connect(demo) as records:  # real washes, so to say: what is invented is refused
            records.execute("UPDATE sample SET demo = 0")
        records.close()
        theirs = {wash["id"]: wash for wash in washes(demo) if wash["mites"] is not None}
        for dialect in ("comma", "semicolon"):
            table, database = self.folder / (dialect + ".csv"), self.folder / (dialect + ".db")
            done = subprocess.run([PROGRAM, "export", "--as", "csv", "--dialect", dialect, demo, table],
                                  capture_output=True, timeout=60, check=False)
            self.assertEqual(done.returncode, 0, done.stderr)
            code, out, err = call(database, table)
            self.assertEqual(err, "")
            ours = {wash["id"]: wash for wash in washes(database)}
            self.assertGreater(len(ours), 20)
            self.assertEqual(set(ours), set(theirs))
            for key, wash in ours.items():
                for name in ("mites", "mites_second_rinse", "method", "label", "yard", "utc_offset_min"):
                    self.assertEqual(wash[name], theirs[key][name], name)
                for name in ("bees_mean", "bees_cv", "load_q05", "load_q50", "load_q95"):
                    self.assertAlmostEqual(wash[name] / theirs[key][name], 1, delta=1e-4, msg=name)
            code, out, _ = call(demo, table)  # where they came from they are all here
            self.assertIn(f"0 washes kept, 0 new yards, 0 new colonies, {len(ours)} here already", out)

    def test_hostile_tables(self):
        names = "day,yard,colony,mites,bees,note\n"
        good = "2024-05-01,Mill,4,3,300,fine\n"
        sparse = self.folder / "sparse.csv"
        with open(sparse, "wb") as file:
            file.truncate(2_000_000_000)
        os.mkfifo(self.folder / "pipe.csv")
        refused = {
            "sparse": (sparse, "larger than 64 MB"),
            "pipe": (self.folder / "pipe.csv", "is no file"),
            "folder": (self.folder, "is no file"),
            "gone": (self.folder / "gone.csv", "is not there"),
            "empty": (self.write("empty.csv", b""), "There is nothing in this file"),
            "zero bytes": (self.write("zero.csv", names.encode() + b"2024-05-01,Mi\0ll,4,3,300,\n"), "Line 2 has a zero byte"),
            "only zero bytes": (self.write("zeros.csv", b"\0" * 100_000), "zero byte"),
            "no header": (self.write("bare.csv", good), "The first row has a day in it"),
            "many columns": (self.write("wide.csv", "a," * 5000 + "\n"), "5001 columns"),
            "half a UTF-16": (self.write("half.csv", "day,mites\n".encode("utf-16")[:-1]), "UTF-16"),
        }
        for name, (path, says) in refused.items():
            with self.subTest(name):
                code, out, err = call(self.database, path)
                self.assertEqual((code, out), (1, ""))
                self.assertIn(says, err)
                self.assertEqual(err.count("\n"), 1)
                self.assertFalse(self.database.exists())
        code, out, _ = call(self.database, self.write("names.csv", names))
        self.assertEqual(code, 0)
        self.assertIn("0 washes kept", out)
        code, out, _ = call(self.database, self.write("long.csv", names + "2024-05-01,Mill,4,3,300," + "x" * 1_100_000 + "\n"
                                                      + "y" * 3_000_000 + "\n" + good))
        self.assertIn("Line 2: refused: cell 6 is longer than a million letters.", out)
        self.assertIn("Line 3: refused: the row of names has 6 cells, this one 1.", out)
        self.assertIn("1 wash kept", out)
        code, out, _ = call(self.database, self.write("cmd.csv", names + "2024-05-01,=cmd|' /C calc'!A0,../../etc,3,300,=1+1\n"))
        self.assertIn("1 wash kept", out)
        self.assertEqual({wash["yard"] for wash in washes(self.database)}, {"Mill", "=cmd|' /C calc'!A0"})
        noise = self.write("noise.csv", os.urandom(300_000).replace(b"\0", b"x"))
        code, _, err = call(self.database, noise)
        self.assertIn(code, (1, 2))
        self.assertTrue(err)
        self.assertEqual(len(washes(self.database)), 2)


if __name__ == "__main__":
    unittest.main()
