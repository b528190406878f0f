#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""The verbs of halfcup-desk that work on a keeper's database, on a real one made from the demo season.

desk_keeper.py PROGRAM
"""

import csv
import io
import os
import pathlib
import sqlite3
import subprocess
import sys
import tempfile
import unittest

PROGRAM = sys.argv.pop(1)


def call(*words):
    done = subprocess.run([PROGRAM, *map(str, words)], capture_output=True, timeout=60, check=False)
    return done.returncode, done.stdout.decode(), done.stderr.decode()


def rows(text):
    return list(csv.DictReader(io.StringIO(text, newline=""), strict=True))


class Keeper(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.folder = tempfile.TemporaryDirectory()
        cls.database = pathlib.Path(cls.folder.name) / "keeper.db"
        code, out, err = call("demo", cls.database, "--until", "2026-05-17")
        assert (code, err) == (0, ""), err
        assert "9 colonies" in out

    @classmethod
    def tearDownClass(cls):
        cls.folder.cleanup()

    def choices(self, *words):
        code, out, err = call("choices", self.database, *words)
        self.assertEqual((code, err), (0, ""))
        return rows(out)

    def verdicts(self, *words):
        return {row["choice"]: row["verdict"] for row in self.choices(*words)}

    def reasons(self, found, choice, says):
        return [row for row in found if row["choice"] == choice and row["reason_says"] == says]

    def test_due_as_on_the_morning_of_the_story(self):
        code, out, err = call("due", self.database, "--on", "2026-05-18")
        self.assertEqual((code, err), (0, ""))
        found = rows(out)
        self.assertEqual(len(found), 9)
        self.assertEqual(found[0], {"yard": "Alder Bend", "colony": "4", "due_on": "2026-05-12", "days_late": "6",
                                    "reason": "monthly wash", "sentence": "Due: monthly wash, 6 days late"})
        alder = [row["colony"] for row in found if row["yard"] == "Alder Bend"]
        self.assertEqual(alder, ["4", "1", "2", "7", "10"])

    def test_a_new_database_is_its_owners_alone(self):
        before = os.umask(0o022)  # as most systems have it: without more, all may read a new file
        try:
            made = pathlib.Path(self.folder.name) / "made.db"
            self.assertEqual(call("demo", made)[0], 0)
        finally:
            os.umask(before)
        self.assertEqual(oct(made.stat().st_mode & 0o7777), oct(0o600))

    def test_something_that_is_no_file_is_left_alone(self):
        folder = pathlib.Path(self.folder.name) / "folder"
        folder.mkdir()
        code, out, err = call("demo", folder)
        self.assertEqual((code, out), (1, ""))
        self.assertIn("but something else of that name.", err)

    def test_due_before_the_turn_date(self):
        found = {row["colony"]: row for row in rows(call("due", self.database, "--on", "2026-07-20")[1])}
        self.assertEqual(found["7"]["reason"], "wash before the turn date")
        self.assertEqual(found["7"]["due_on"], "2026-05-20")

    def test_a_day_that_is_past(self):
        # A database that goes on after the day answers as one that ends with it.
        with tempfile.TemporaryDirectory() as folder:
            whole = pathlib.Path(folder) / "whole.db"
            call("demo", whole)
            for day in ("2026-05-17", "2026-05-01"):
                self.assertEqual(call("due", whole, "--on", day), call("due", self.database, "--on", day))

    def test_formic_acid_by_the_forecast(self):
        # 10 to 29.5 C: label of one product, as the handbook has it.
        off = ("4", "--on", "2026-05-18", "--supers", "off")
        self.assertEqual(self.verdicts(*off, "--highs", "24,26,27")["formic-acid"], "fits")
        hot = self.choices(*off, "--highs", "24,32,27")
        against = self.reasons(hot, "formic-acid", "not now")
        self.assertEqual(against[0]["reason"], "Too hot: 32 C on 2026-05-19, the limit is 29.5 C.")
        self.assertEqual(against[0]["source"], "Label of one product (published)")
        self.assertEqual(self.verdicts(*off, "--highs", "8,8,8")["formic-acid"], "not now")
        self.assertEqual(self.verdicts(*off, "--highs", "75 79 81", "--unit", "F")["formic-acid"], "fits")

    def test_supers_come_from_the_records(self):
        found = self.verdicts("4", "--on", "2026-05-18", "--highs", "24,26,27")  # on since 3 May
        for choice in ("thymol", "amitraz", "tau-fluvalinate"):
            self.assertEqual(found[choice], "not now")
        self.assertEqual(found["formic-acid"], "fits with care")
        self.assertEqual(self.verdicts("4", "--on", "2026-05-18", "--highs", "22 22 22", "--supers", "off")["thymol"],
                         "fits")

    def test_oxalic_acid_by_brood(self):
        # 39 to 52 % with brood, 99.4 % without: Gregorc & Planinc 2001, Apidologie 32:333-340.
        found = self.choices("4", "--on", "2026-05-18", "--supers", "off")
        care = self.reasons(found, "oxalic-acid", "fits with care")
        self.assertTrue(any("39 to 52 %" in row["reason"] and "Gregorc" in row["source"] for row in care))
        broodless = self.choices("4", "--on", "2026-12-20", "--brood", "none", "--supers", "off")
        self.assertTrue(any("99.4" in row["reason"] for row in self.reasons(broodless, "oxalic-acid", "fits")))

    def test_every_reason_has_a_source(self):
        for row in self.choices("4", "--on", "2026-05-18", "--for", "yard"):
            self.assertTrue(row["source"] and row["reason"], row)

    def test_by_label_and_by_id(self):
        identity = sqlite3.connect(self.database).execute("SELECT id FROM colony WHERE label = '4'").fetchone()[0]
        self.assertEqual(self.choices("4", "--on", "2026-05-18"), self.choices(identity, "--on", "2026-05-18"))

    def test_questions_that_cannot_be_answered(self):
        for words, code, says in (
            (("due", "nowhere.db"), 1, "There is no database"),
            (("due",), 2, "Which database?"),
            (("due", self.database, "--on", "2027-02-29"), 2, "is not a day"),
            (("choices", self.database), 2, "which colony"),
            (("choices", self.database, "99"), 1, "There is no colony \"99\""),
            (("choices", self.database, "4", "--in", "Nowhere"), 1, "There is no yard"),
            (("choices", self.database, "4", "--highs", "200,20,20"), 1, "200 C is no temperature"),
            (("choices", self.database, "4", "--highs", "24,26"), 1, "at least 3 days"),
            (("choices", self.database, "4", "--highs", "warm"), 2, "is no temperature"),
            (("choices", self.database, "4", "--highs", "20,20,20", "--lows", "10,10"), 1, "3 highs and 2 lows"),
            (("choices", self.database, "4", "--brood", "some"), 2, "--brood"),
            (("choices", self.database, "4", "--frames", "-1"), 2, "--frames"),
            (("choices", self.database, "4", "--unit", "K"), 2, "--unit"),
        ):
            got, out, err = call(*words)
            self.assertEqual(got, code, (words, err))
            self.assertIn(says, err)
            self.assertEqual(out, "", words)
        self.assertFalse(pathlib.Path("nowhere.db").exists())

    def test_two_colonies_of_one_label(self):
        with tempfile.TemporaryDirectory() as folder:
            database = pathlib.Path(folder) / "twice.db"
            call("demo", database)
            connection = sqlite3.connect(database)
            connection.execute("UPDATE colony SET label = '4' WHERE label = '3'")
            connection.commit()
            connection.close()
            code, out, err = call("choices", database, "4")
            self.assertEqual((code, out), (1, ""))
            self.assertIn("name the yard with --in", err)
            self.assertEqual(call("choices", database, "4", "--in", "Long Furrow")[0], 0)

    def test_files_that_are_no_database_stay_as_they_are(self):
        with tempfile.TemporaryDirectory() as folder:
            path = pathlib.Path(folder) / "letter.txt"
            path.write_text("Dear keeper, this is no database at all, but a letter of some length.\n" * 40)
            before = path.read_bytes()
            for verb in (("due", path), ("choices", path, "4"), ("demo", path)):
                code, out, err = call(*verb)
                self.assertEqual((code, out), (1, ""))
                self.assertIn("not a database of Halfcup", err)
            self.assertEqual(path.read_bytes(), before)

    def test_the_demo_twice_changes_nothing(self):
        with tempfile.TemporaryDirectory() as folder:
            database = pathlib.Path(folder) / "demo.db"
            call("demo", database)
            dump = list(sqlite3.connect(database).iterdump())
            call("demo", database)
            self.assertEqual(list(sqlite3.connect(database).iterdump()), dump)

    def test_help(self):
        for verb in ("due", "choices", "demo"):
            code, out, err = call(verb, "--help")
            self.assertEqual((code, err), (0, ""))
            self.assertIn(f"usage: halfcup-desk {verb}", out)
            self.assertIn(verb, call("--help")[1])


if __name__ == "__main__":
    unittest.main()
