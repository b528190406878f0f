#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""Files for people out of the real program, read by programs that are not ours and held against the database itself.

people_outside.py PROGRAM

Read by: Python's csv, gnumeric's ssconvert, GDAL's ogrinfo, icalendar, poppler's pdftotext, pdffonts, pdfinfo and pdftoppm.
What should be in them comes from sqlite3. A reader that is not installed skips its test with a sentence.
"""

import csv
import datetime
import gzip
import io
import os
import pathlib
import re
import shutil
import sqlite3
import subprocess
import sys
import tempfile
import unittest
import xml.etree.ElementTree

PROGRAM = sys.argv.pop(1)
HOSTILE = ["=cmd|' /C calc'!A0", "@SUM(1+1)", "quo\"ted; 'and', comma", "two\nlines", "right \u200f\u202eleft", "con\x01\x1btrol"]
FINISHED = "FROM sample WHERE state <> 'draft' AND removed = 0"


def call(*words):
    done = subprocess.run([PROGRAM, *map(str, words)], capture_output=True, timeout=100, check=False)
    return done.returncode, done.stdout.decode(), done.stderr.decode()


def ran(*words, **more):
    if not shutil.which(words[0]):
        raise unittest.SkipTest(f"{words[0]} is not installed: platform/linux/packages names its package.")
    done = subprocess.run([str(word) for word in words], capture_output=True, timeout=100, check=False, **more)
    assert done.returncode == 0, done.stderr
    return done.stdout.decode()


def near(one, other):
    return abs(one - other) <= 1e-5 * abs(other) + 1e-12  # six digits are written


class Outside(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.place = tempfile.TemporaryDirectory()
        cls.folder = pathlib.Path(cls.place.name)
        cls.database = cls.folder / "keeper.db"
        assert call("demo", cls.database)[0] == 0
        base = sqlite3.connect(cls.database)
        for i, (identity,) in enumerate(base.execute(
                "SELECT id FROM colony WHERE id IN (SELECT colony_id FROM sample) AND label NOT IN ('4', '7') ORDER BY id LIMIT 6").fetchall()):
            base.execute("UPDATE colony SET label = ? WHERE id = ?", (HOSTILE[i], identity))
        base.execute("UPDATE yard SET registration_number = ? WHERE name = 'Alder Bend'", ("=1+1",))
        base.commit()
        cls.base = base

    @classmethod
    def tearDownClass(cls):
        cls.base.close()
        cls.place.cleanup()

    def export(self, kind, name, *words):
        path = self.folder / name
        code, out, err = call("export", "--as", kind, *words, self.database, path)
        self.assertEqual((code, out, err), (0, "", ""))
        return path

    def table(self, kind, *words, delimiter=",", encoding="utf-8"):
        text = self.export(kind, f"{kind}.csv", *words).read_bytes().decode(encoding)
        return list(csv.DictReader(io.StringIO(text, newline=""), delimiter=delimiter, strict=True))

    def holds_samples(self, rows, comma=False):
        """Every wash of the database, once, with its figures."""
        def number(text):
            return float(text.replace(",", ".") if comma else text) if text else None
        found = {row["sample_id"]: row for row in rows}
        kept = self.base.execute(f"SELECT id, mites, load_q05, load_q50, load_q95, chance_over, bees_mean {FINISHED}").fetchall()
        self.assertGreater(len(kept), 60)
        self.assertEqual((len(rows), len(found)), (len(kept), len(kept)))
        for identity, *figures in kept:
            names = ("mites", "load_q05_per_100", "load_q50_per_100", "load_q95_per_100", "chance_over_treat_line", "bees_mean")
            for name, figure in zip(names, figures):
                read = number(found[identity][name])
                if name == "bees_mean" and not figure:
                    figure = None
                self.assertEqual(read is None, figure is None, (name, read, figure))
                self.assertTrue(figure is None or near(read, figure), (name, read, figure))

    def test_samples(self):
        rows = self.table("csv")
        self.holds_samples(rows)
        labels = {row["colony"] for row in rows}
        for label in HOSTILE[:2]:
            self.assertIn("'" + label, labels)
        for label in HOSTILE[2:5]:
            self.assertIn(label, labels)
        self.assertIn("control", labels)

    def test_samples_for_other_locales(self):
        plain = self.table("csv")
        other = self.table("csv", "--dialect", "semicolon", delimiter=";", encoding="utf-8-sig")
        self.assertTrue((self.folder / "csv.csv").read_bytes().startswith(b"\xef\xbb\xbf"))
        self.holds_samples(other, comma=True)
        for one, two in zip(plain, other, strict=True):
            for name, cell in one.items():
                expected = cell.replace(".", ",") if re.fullmatch(r"-?\d+\.\d+(e-?\d+)?", cell) else cell
                self.assertEqual(two[name], expected, name)

    def test_counts(self):
        rows = self.table("counts")
        kept = self.base.execute("SELECT sample_id, number, rinse, change, typed, at_ms FROM count_event WHERE sample_id IN "
                                 f"(SELECT id {FINISHED}) ORDER BY sample_id, number").fetchall()
        self.assertGreater(len(kept), 200)
        rows.sort(key=lambda row: (row["sample_id"], int(row["number"])))
        for row, (identity, number, rinse, change, typed, at) in zip(rows, kept, strict=True):
            self.assertEqual((row["sample_id"], row["number"], row["rinse"], row["act"]), (identity, str(number), str(rinse), change))
            self.assertEqual(row["typed_count"], str(typed) if change == "typed" else "")
            self.assertEqual(round(datetime.datetime.fromisoformat(row["at"]).timestamp() * 1000), at)
        last = {row["sample_id"]: int(row["mites_so_far"]) for row in rows if row["rinse"] == "1"}
        for identity, mites in self.base.execute(f"SELECT id, mites {FINISHED} AND mites IS NOT NULL"):
            if identity in last:
                self.assertEqual(last[identity], mites)

    def test_treatments(self):
        rows = self.table("treatments")
        kept = self.base.execute(
            "SELECT t.id, c.colony_id, t.product, t.batch, t.first_day, t.last_day, t.removed_on, t.withdrawal_days, t.supplier, "
            "t.proof, t.quantity, t.prescriber, t.done_by, t.expiry, y.registration_number FROM treatment t JOIN treated c ON "
            "c.treatment_id = t.id JOIN yard y ON y.id = t.yard_id WHERE t.removed = 0 AND c.removed = 0").fetchall()
        self.assertEqual(len(kept), 19)
        names = ("treatment_id", "colony_id", "product", "batch", "first_day", "last_day", "removed_on", "withdrawal_days", "supplier",
                 "proof_of_purchase", "quantity", "prescriber", "done_by", "expiry", "yard_registration")
        def cell(value):
            return "" if value is None else "'" + value if str(value).startswith("=") else str(value)
        self.assertEqual(sorted(tuple(row[name] for name in names) for row in rows),
                         sorted(tuple(cell(value) for value in row) for row in kept))

    def spreadsheet(self, path, environment=None):
        """The cells of the first sheet as a spreadsheet holds them: (row, column) -> (type, text)."""
        into = path.with_suffix(".gnumeric")
        ran("ssconvert", path, into, "-T", "Gnumeric_XmlIO:sax", env={**os.environ, **(environment or {})})
        raw = into.read_bytes()
        tree = xml.etree.ElementTree.fromstring(gzip.decompress(raw) if raw[:2] == b"\x1f\x8b" else raw)
        return {(int(cell.get("Row")), int(cell.get("Col"))): (cell.get("ValueType"), cell.text or "")
                for cell in tree.iter("{http://www.gnumeric.org/v10.dtd}Cell")}

    def holds_in_spreadsheet(self, cells):
        names = {text: column for (row, column), (_, text) in cells.items() if row == 0}
        rows = {cells[key][1]: key[0] for key in cells if key[1] == names["sample_id"] and key[0] > 0}
        kept = self.base.execute(f"SELECT id, mites, load_q50 {FINISHED} AND mites IS NOT NULL").fetchall()
        for identity, mites, load in kept:
            for name, figure in (("mites", mites), ("load_q50_per_100", load)):
                kind, text = cells[rows[identity], names[name]]
                self.assertIn(kind, ("30", "40"), "a number")  # of the format: 30 integer, 40 float, 60 text
                self.assertTrue(near(float(text), figure))
        # What has no type is a formula there.
        self.assertEqual([text for kind, text in cells.values() if kind is None], [])

    def test_a_spreadsheet_reads_the_same_numbers_and_no_formula(self):
        self.holds_in_spreadsheet(self.spreadsheet(self.export("csv", "washes.csv")))

    def test_a_spreadsheet_with_decimal_commas(self):
        if not shutil.which("localedef"):
            self.skipTest("localedef is not installed, so no locale with a decimal comma can be made.")
        locales = self.folder / "locales"
        locales.mkdir()
        made = subprocess.run(["localedef", "-i", "de_DE", "-f", "UTF-8", locales / "de_DE.UTF-8"], capture_output=True, check=False)
        if made.returncode != 0:
            self.skipTest("The sources of the locale de_DE are not installed.")
        path = self.export("csv", "semicolon.txt", "--dialect", "semicolon")
        self.holds_in_spreadsheet(self.spreadsheet(path, {"LOCPATH": str(locales), "LC_ALL": "de_DE.UTF-8"}))

    def test_a_map_reader_finds_every_place(self):
        for words, decimals in (((), 2), (("--exact",), 6)):
            text = ran("ogrinfo", "-ro", "-al", self.export("geojson", "map.geojson", *words))
            kept = self.base.execute(f"SELECT id, latitude_deg, longitude_deg, yard_id, position_state, mites {FINISHED}").fetchall()
            yards = {row[0]: row[1:] for row in self.base.execute("SELECT id, latitude_deg, longitude_deg FROM yard WHERE removed = 0")}
            self.assertIn(f"Feature Count: {len(kept) + len(yards)}", text)
            found = {}
            for feature in text.split("OGRFeature(")[1:]:
                point = re.search(r"POINT \((\S+) (\S+)\)", feature)
                mites = re.search(r"mites \(Integer\) = (\d+)", feature)
                found[re.search(r"  id \(String\) = (\S+)", feature)[1]] = (
                    point and (float(point[1]), float(point[2])), mites and int(mites[1]))
            for identity, latitude, longitude, yard, state, mites in kept:
                if not words and yards[yard][0] is not None:
                    latitude, longitude = yards[yard]
                place = (round(longitude, decimals), round(latitude, decimals)) if state == "stamped" else None
                self.assertEqual(found[identity], (place, mites))
            for identity, (latitude, longitude) in yards.items():
                self.assertEqual(found[identity][0], (round(longitude, decimals), round(latitude, decimals)))

    def test_a_calendar_reader_finds_every_date(self):
        try:
            import icalendar
        except ImportError:
            self.skipTest("python3-icalendar is not installed.")
        calendar = icalendar.Calendar.from_ical(self.export("ical", "season.ics", "--on", "2026-08-20").read_bytes())
        events = calendar.walk("VEVENT")
        days = {(event["UID"].split("/")[0], event["DTSTART"].dt) for event in events}
        self.assertTrue(all(event["SUMMARY"].startswith("Demo: ") for event in events))
        self.assertEqual(len({event["UID"] for event in events}), len(events))
        due = self.base.execute("SELECT removal_due FROM treatment WHERE removed_on IS NULL AND removal_due >= '2026-08-20'").fetchall()
        dates = {day for _, day in days}
        for (day,) in due:
            self.assertIn(datetime.date.fromisoformat(day), dates)
        for line in csv.DictReader(io.StringIO(call("due", self.database, "--on", "2026-08-20")[1], newline="")):
            if line["reason"] != "after a treatment":
                wanted = max(line["due_on"], "2026-08-20")
                self.assertIn(datetime.date.fromisoformat(wanted), dates, line)

    def test_a_report_has_the_figures_of_the_database(self):
        for words, where, paper in (((), "1", "595"), (("--yard", "Alder Bend", "--paper", "letter"), "yard_id = (SELECT id FROM yard "
                                    "WHERE name = 'Alder Bend')", "612"), (("--colony", "7", "--year", "2026"),
                                    "colony_id = (SELECT id FROM colony WHERE label = '7')", "595")):
            path = self.export("pdf", "report.pdf", *words)
            text = ran("pdftotext", "-layout", path, "-")
            # A line of the table: ... 3.2 (1.4 to 7.8)  55 %  9  302  3; own ...
            washes = [(int(mites), bool(own)) for mites, own in re.findall(
                r"\([\d.]+ to [\d.]+\) +(?:under |over )?[\d.]+ ?%? +(\d+) +\d{2,3} +3(; own)?", text)]
            kept = self.base.execute(f"SELECT mites, own_line {FINISHED} AND state = 'finished' AND mites IS NOT NULL AND {where} "
                                     "ORDER BY scooped_at_ms").fetchall()
            self.assertGreater(len(kept), 3)
            self.assertEqual(washes, [(mites, own is not None) for mites, own in kept])
            for mites, load, high in self.base.execute(
                    f"SELECT mites, load_q50, load_q95 {FINISHED} AND state = 'finished' AND mites > 0 AND load_q50 < 9.9 "
                    f"AND load_q95 < 9.9 AND {where}"):
                self.assertIn(f"{load:.1f} (", text)
                self.assertIn(f"to {high:.1f})", text)
            for product, batch in self.base.execute("SELECT product, batch FROM treatment WHERE removed = 0 " + (
                    "AND first_day >= '2026' " if "--year" in words else "") + (
                    "" if where == "1" else " AND id IN (SELECT treatment_id FROM treated JOIN colony ON colony.id = treated.colony_id "
                    f"WHERE {where.replace('colony_id', 'colony.id').replace('yard_id', 'treatment.yard_id')})")):
                self.assertTrue(product in text and batch in text, (product, batch))
            pages = text.count("\f")
            self.assertIn(f"page {pages} of {pages}", text)
            self.assertEqual(text.count("DEMO: holds invented data"), pages)
            self.assertNotIn("53.0", text)
            about = ran("pdfinfo", path)
            self.assertRegex(about, rf"Pages: +{pages}\n")
            self.assertRegex(about, rf"Page size: +{paper} x")
            fonts = ran("pdffonts", path).splitlines()[2:]
            self.assertTrue(fonts)
            for font in fonts:  # columns emb sub uni: embedded, and with what text they are
                self.assertRegex(font, r"Identity-H +yes +\w+ +yes ")

    def test_pages_can_be_drawn(self):
        path = self.export("pdf", "drawn.pdf")
        ran("pdftoppm", "-r", "40", "-gray", path, self.folder / "page")
        pages = sorted(self.folder.glob("page-*.pgm"))
        self.assertGreater(len(pages), 2)
        for page in pages:
            raw = page.read_bytes()
            width, height = map(int, raw.split(b"\n", 2)[1].split())
            pixels = raw[-width * height:]
            dark = sum(pixel < 128 for pixel in pixels) / len(pixels)
            self.assertTrue(0.003 < dark < 0.2, (page.name, dark))

    def test_hostile_names_on_paper(self):
        text = ran("pdftotext", "-layout", self.export("pdf", "hostile.pdf", "--exact"), "-")
        for says in ("=cmd|", "@SUM(1+1)", "two lines", "control"):
            self.assertIn(says, re.sub(r"con\s*trol", "control", text))
        for mark in ("\u202e", "\x01", "\x1b"):
            self.assertNotIn(mark, text)
        latitude = self.base.execute("SELECT latitude_deg FROM yard WHERE name = 'Alder Bend'").fetchone()[0]
        self.assertIn(f"latitude {latitude:.6f}", text)

    def test_only_what_was_asked_for(self):
        rows = self.table("csv", "--year", "2025")
        self.assertEqual({row["scooped_at"][:4] or row["started_at"][:4] for row in rows} - {"2025"}, set())
        one = self.table("csv", "--colony", "7")
        self.assertEqual({row["colony"] for row in one}, {"7"})
        self.assertEqual(len(self.table("csv", "--yard", "Alder Bend")) + len(self.table("csv", "--yard", "Long Furrow")),
                         len(self.table("csv")))

    def test_standard_output(self):
        for kind in ("csv", "counts", "treatments", "geojson"):
            code, out, err = call("export", "--as", kind, self.database, "-")
            self.assertEqual((code, err), (0, ""))
            self.assertEqual(out.encode(), self.export(kind, "same").read_bytes())

    def test_questions_that_cannot_be_answered(self):
        before = list(self.base.iterdump())
        into = self.folder / "not-there"
        for words, code, says in (
            ((self.database, into), 2, "--as says what to write"),
            (("--as", "xls", self.database, into), 2, "is none of"),
            (("--as", "pdf", self.database, "-"), 2, "name a file"),
            (("--as", "csv", self.database), 2, "into which file"),
            (("--as", "csv", "nowhere.db", into), 1, "There is no database"),
            (("--as", "csv", self.database, self.database), 2, "the database itself"),
            (("--as", "csv", self.database, self.folder), 1, "it is a folder"),
            (("--as", "csv", self.database, "/nowhere/at/all"), 1, "folder is not there"),
            (("--as", "csv", "--dialect", "tabs", self.database, into), 2, "--dialect"),
            (("--as", "pdf", "--paper", "a3", self.database, into), 2, "--paper"),
            (("--as", "csv", "--exact=no", self.database, into), 2, "takes no value"),
            (("--as", "csv", "--year", "26", self.database, into), 2, "--year"),
            (("--as", "csv", "--calendar-year", self.database, into), 2, "goes with --year"),
            (("--as", "csv", "--colony", "99", self.database, into), 1, "There is no colony"),
            (("--as", "csv", "--yard", "Nowhere", self.database, into), 1, "There is no yard"),
            (("--as", "csv", "--yard", "Alder Bend", "--colony", "7", self.database, into), 2, "Either --colony or --yard"),
            (("--as", "csv", "--in", "Alder Bend", self.database, into), 2, "--in"),
            (("--as", "ical", "--exact", self.database, into), 2, "no --colony"),
        ):
            got, out, err = call("export", *words)
            self.assertEqual((got, out), (code, ""), (words, err))
            self.assertIn(says, err)
        self.assertFalse(into.exists())
        self.assertEqual(list(self.base.iterdump()), before)


if __name__ == "__main__":
    unittest.main()
