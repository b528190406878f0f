#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""Reports out of the real program, read back and held against the rows of the database, figure by figure.

people_figures.py PROGRAM

Read by poppler's pdftotext, pdffonts, pdfimages and pdfinfo. What should stand there is computed here from what
sqlite3 reads, and from the handbook's files; nothing of the program computes it.
"""

import datetime
import json
import math
import pathlib
import re
import shutil
import sqlite3
import subprocess
import sys
import tempfile
import unittest

PROGRAM = sys.argv.pop(1)
HANDBOOK = pathlib.Path(__file__).resolve().parents[2] / "assets/handbook"
ON = datetime.date(2026, 11, 27)
MONTHS = "Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec".split()
MISSING = "not written down"
PAPERS = {"a4": (595, 842), "letter": (612, 792)}  # points: ISO 216, and 8.5 x 11 inches


def ran(*words):
    if not shutil.which(words[0]):
        raise unittest.SkipTest(f"{words[0]} is not installed: platform/linux/packages names its package.")
    done = subprocess.run([str(word) for word in words], capture_output=True, timeout=100, check=False)
    assert done.returncode == 0, (words, done.stderr)
    return done.stdout.decode()


def smooth(text):
    return " ".join(text.split())


def day(date):
    if isinstance(date, str):
        date = datetime.date.fromisoformat(date)
    return f"{date.day} {MONTHS[date.month - 1]} {date.year}"


def spoken(date):  # as pictures say it
    return date.strftime(f"{date.day} %B %Y")


def load(per100):
    if per100 >= 9.95:
        return str(math.floor(per100 + 0.5))
    if 0 < per100 < 0.05:
        return "under 0.1"
    return "0" if per100 == 0 else f"{per100:.1f}"


def chance(share):
    percent = 100 * share
    if percent < 0.5:
        return "under 1 %"
    if percent > 99.5:
        return "over 99 %"
    exact = any(abs(percent - boundary) < 0.95 for boundary in (20, 50))
    return f"{percent:.1f} %" if exact else f"{percent:.0f} %"


class Wash:
    """A finished wash as its row has it."""

    def __init__(self, row):
        self.__dict__.update(row)
        moment = self.scooped_at_ms if self.scooped_at_ms is not None else self.started_at_ms
        local = datetime.datetime(1970, 1, 1) + datetime.timedelta(milliseconds=moment, minutes=self.utc_offset_min)
        self.moment, self.day = moment, local.date()

    def range(self):
        return f"{load(self.load_q05 if self.mites else 0)} to {load(self.load_q95)}"

    def figures(self):
        return f"{load(self.load_q50)} ({self.range()})"

    def lines(self):
        return f"{self.treat_line:.4g}" + (f"; own {self.own_line:.4g}" if self.own_line is not None else "")

    def against(self, line, share):
        """The four standings (design of the project, also in cpp/mites/standing.h), the graver the larger."""
        if self.load_q50 >= line or share > 0.5:
            return 3
        if self.bees_mean < 200 and self.load_q05 <= line <= self.load_q95 and self.load_q95 > 4 * self.load_q05:
            return 1
        return 2 if share >= 0.2 else 0

    def standing(self):
        graver = self.against(self.treat_line, self.chance_over)
        if self.own_line is not None:
            graver = max(graver, self.against(self.own_line, self.chance_over_own))
        return ("Under your line", "Can't tell yet", "Close to your line", "Over your line")[graver]

    def row(self, colony):
        bees = f" {math.floor(self.bees_mean + 0.5)}" if self.bees_mean > 0 else ""
        method = self.method.replace("_", " ").capitalize()
        return (f"{day(self.day)} {colony} {self.standing()} {self.figures()} {chance(self.chance_over)} {self.mites}{bees} "
                f"{self.lines()} {method}")


class Figures(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.place = tempfile.TemporaryDirectory()
        cls.folder = pathlib.Path(cls.place.name)
        cls.database = cls.folder / "keeper.db"
        subprocess.run([PROGRAM, "demo", cls.database], check=True, capture_output=True, timeout=100)
        base = cls.base = sqlite3.connect(cls.database)
        base.row_factory = sqlite3.Row
        # Figures at the edges of how they are written, in two washes that are each their colony's last; and a
        # treatment with everything, and one with next to nothing.
        last = "SELECT id FROM sample WHERE colony_id = (SELECT id FROM colony WHERE label = ?) AND mites IS NOT NULL ORDER BY scooped_at_ms DESC LIMIT 1"
        for label, mites, figures in (("2", 755, (180.4, 250.25, 331.7, 1, 1)), ("5", 0, (0.0004, 0.0312, 0.0461, 0.0001, 0.0049))):
            base.execute("UPDATE sample SET mites = ?, load_q05 = ?, load_q50 = ?, load_q95 = ?, chance_over = ?, chance_over_own = "
                         f"CASE WHEN own_line IS NULL THEN NULL ELSE ? END WHERE id = ({last})", (mites, *figures, label))
        base.execute("UPDATE treatment SET prescriber = 'the district vet', proof = 'receipt 7 / 2026', withdrawal_days = 14, "
                     "note = 'two of the pads lay crooked' WHERE batch = 'TH-88'")
        base.execute("UPDATE treatment SET supplier = '', proof = '', quantity = '', batch = '', expiry = NULL, done_by = '', "
                     "withdrawal_days = NULL, removed_on = NULL WHERE batch = 'AM-2210'")
        base.commit()
        cls.yards = {row["id"]: row["name"] for row in base.execute("SELECT * FROM yard WHERE removed = 0")}
        cls.colonies = {row["id"]: row for row in base.execute("SELECT * FROM colony WHERE removed = 0")}
        cls.washes = sorted((Wash(dict(row)) for row in base.execute(
            "SELECT * FROM sample WHERE state = 'finished' AND removed = 0 AND mites IS NOT NULL")), key=lambda wash: wash.moment)
        assert len(cls.washes) > 60
        cls.texts = {}

    @classmethod
    def tearDownClass(cls):
        cls.base.close()
        cls.place.cleanup()

    def scopes(self):
        """Everything, each yard, and one colony of each: (words for the program, yards in it, colony or nothing)."""
        yield (), list(self.yards), None
        for identity, name in self.yards.items():
            yield ("--yard", name), [identity], None
        for label in ("7", "5"):
            colony = next(row for row in self.colonies.values() if row["label"] == label)
            yield ("--colony", label), [colony["yard_id"]], colony["id"]

    def reports(self):
        for paper in PAPERS:
            for words, yards, colony in self.scopes():
                yield paper, self.written(paper, words), yards, colony

    def written(self, paper, words):
        path = self.folder / ("-".join((paper, *words)).replace(" ", "") + ".pdf")
        if not path.exists():
            done = subprocess.run([PROGRAM, "export", "--as", "pdf", "--on", ON.isoformat(), "--paper", paper, *words, self.database, path],
                                  capture_output=True, timeout=100, check=False)
            self.assertEqual((done.returncode, done.stderr), (0, b""))
        return path

    def text(self, path):
        """In the order in which it was printed, without what stands on every page."""
        if path not in self.texts:
            pages = ran("pdftotext", "-raw", path, "-").split("\f")[:-1]
            for i, page in enumerate(pages):
                self.assertIn(f"page {i + 1} of {len(pages)}", page)
            self.texts[path] = smooth(re.sub(
                r"(?m)^(Varroa record\. .* Written on .*|page \d+ of \d+|DEMO: holds invented data)$", " ", "\n".join(
                    re.sub(r" ?page \d+ of \d+", "\n", page) for page in pages)))
            self.assertIsNone(re.search("[\ufb00-\ufb06]", self.texts[path]), "letters were joined: nobody finds the word")
        return self.texts[path]

    def name(self, wash, yards):
        label = self.colonies[wash.colony_id]["label"]
        return f"{label}, {self.yards[wash.yard_id]} (demo)" if len(yards) > 1 else f"{label} (demo)"

    def of(self, yards, colony):
        return [wash for wash in self.washes if wash.yard_id in yards and colony in (None, wash.colony_id)]

    def holds_in_order(self, text, expected):
        at = 0
        for each in expected:
            found = text.find(each, at)
            self.assertGreaterEqual(found, 0, f"missing, or not in its place: {each}")
            at = found + len(each)

    def test_every_wash_once_with_its_figures(self):
        for _, path, yards, colony in self.reports():
            table = self.text(path).split(" Mite washes Day ")[1].split(" Load: mites per 100 adult bees")[0]
            washes = self.of(yards, colony)
            self.assertGreater(len(washes), 5)
            self.holds_in_order(table, [wash.row(self.name(wash, yards)) for wash in washes])
            self.assertEqual(len(re.findall(r" to (?:under )?[\d.]+\) ", table)), len(washes))

    def test_the_last_wash_of_each_colony(self):
        for _, path, yards, colony in self.reports():
            table = re.split(r" The last wash(?: of each colony)? Colony ", self.text(path))[1]
            table = re.split(r" The yards? in pictures | Load over time ", table)[0]
            last = {wash.colony_id: wash for wash in self.of(yards, colony)}
            for wash in last.values():
                self.assertIn(f"{self.name(wash, yards)} {day(wash.day)} {wash.standing()} {wash.figures()} {wash.lines()} "
                              f"{chance(wash.chance_over)}", table)
            self.assertEqual(len(re.findall(r" to (?:under )?[\d.]+\) ", table)), len(last))

    def treatments(self, yards, colony):
        for row in self.base.execute("SELECT * FROM treatment WHERE removed = 0"):
            treated = [each["colony_id"] for each in self.base.execute(
                "SELECT colony_id FROM treated WHERE removed = 0 AND treatment_id = ?", (row["id"],))]
            if row["yard_id"] in yards and colony in (None, *treated):
                yield row, sorted((self.colonies[each]["label"] for each in treated), key=lambda label: (len(label), label))

    def test_every_treatment_with_its_fields(self):
        # Regulation (EU) 2019/6, Article 108(2): date, name, quantity, supplier and proof, animals treated,
        # prescriber, withdrawal (also zero), duration.
        names = {entry["subject"]: entry["words"] for entry in json.loads((HANDBOOK / "substances.json").read_text())["entries"]
                 if entry.get("property") == "name"}
        for _, path, yards, colony in self.reports():
            text = self.text(path).split(" Treatments ")[1].split(" What is to be written down in the European Union")[0]
            given = list(self.treatments(yards, colony))
            self.assertTrue(given)
            for row, labels in given:
                first, end = row["first_day"], datetime.date.fromisoformat(row["removed_on"] or row["last_day"])
                days = day(first) if first == row["last_day"] else f"{day(first)} to {day(row['last_day'])}"
                withdrawal = f"{MISSING}; that is not none"
                if row["withdrawal_days"] is not None:
                    withdrawal = f"{row['withdrawal_days']} days; honey from {day(end + datetime.timedelta(row['withdrawal_days']))}"
                removal = "nothing stays in the hive"
                if row["removed_on"]:
                    removal = f"taken out on {day(row['removed_on'])}"
                elif row["removal_due"]:
                    removal = f"due on {day(row['removal_due'])}; not written down as taken out"
                told = [f"{days}: {row['product']} (invented)", "Substance or measure", names[row["substance"]],
                        "Quantity, all colonies", row["quantity"] or MISSING, "Batch", row["batch"] or MISSING,
                        "Expiry", day(row["expiry"]) if row["expiry"] else MISSING, "Withdrawal", withdrawal,
                        "Taken out of the hive", removal, "Supplier", row["supplier"] or MISSING,
                        "Proof of purchase", row["proof"] or MISSING, "Prescribed by", row["prescriber"] or MISSING,
                        "Done by", row["done_by"] or MISSING]
                if len(yards) > 1:
                    told += ["Yard", self.yards[row["yard_id"]]]
                told += ["Colonies treated", "; ".join(labels)]
                if row["note"]:
                    told += ["Note", row["note"]]
                self.assertIn(smooth(" ".join(told)), text)
            self.assertEqual(text.count("Substance or measure"), len(given))

    def chart(self, washes):
        """What the sentence under a chart of these washes has to say."""
        highest, last = max(washes, key=lambda wash: wash.load_q50), washes[-1]
        yield f"{len(washes)} washes since {spoken(washes[0].day)}."
        yield f"The highest load was {load(highest.load_q50)} mites per 100 bees, on {spoken(highest.day)}."
        if last.mites:
            yield (f"The last wash, on {spoken(last.day)}: {load(last.load_q50)} mites per 100 bees, between {load(last.load_q05)} "
                   f"and {load(last.load_q95)}.")
        else:
            yield f"The last wash, on {spoken(last.day)}, found none: at most {load(last.load_q95)} mites per 100 bees."
        yield f"The treat line is {last.treat_line:.4g}."

    def test_pictures_say_the_figures_of_the_database(self):
        for _, path, yards, colony in self.reports():
            text = self.text(path)
            washes = self.of(yards, colony)
            by_colony = {}
            for wash in washes:
                by_colony.setdefault(wash.colony_id, []).append(wash)
            if colony:
                last = washes[-1]
                self.holds_in_order(text, self.chart(washes))
                self.assertIn(f"{last.mites} mite{'s' * (last.mites != 1)} found: {last.figures()} per 100 bees.", text)
                full = 0 if last.mites == 0 else math.floor(last.load_q05)
                self.assertIn(f"{min(full, 100)} filled", text)
                continue
            if len(yards) == 1:
                for identity, its in by_colony.items():
                    part = text.split(f" Colony {self.colonies[identity]['label']} (demo) ")[1]
                    self.holds_in_order(part, self.chart(its))
            for yard in yards:
                lasts = [its[-1] for its in by_colony.values() if its[-1].yard_id == yard]
                highest = max(lasts, key=lambda wash: wash.load_q50)
                part = text.split(f" {self.yards[yard]}: the last wash of each colony, ")[1]
                over = sum(wash.standing() == "Over your line" for wash in lasts)
                self.holds_in_order(part, [
                    f"treat line {highest.treat_line:.4g}", f"{len(lasts)} colonies, the highest load first.",
                    {0: "None of them is over its line.", 1: "1 of them is over the line."}.get(over, f"{over} of them are over the line."),
                    f"Colony {self.colonies[highest.colony_id]['label']}: {load(highest.load_q50)} per 100 bees, "
                    f"{load(highest.load_q05)} to {load(highest.load_q95)} in 9 of 10 cases. {highest.standing()}."])

    def test_what_was_and_not_what_may_come(self):
        for _, path, _, _ in self.reports():
            text = self.text(path)
            self.assertNotIn("If nothing is done", text)
            self.assertNotIn("load ahead", text)
            self.assertNotIn("north up", text)  # where the hives stand: only with exact positions

    def test_words_are_words_and_pictures_are_lines(self):
        for paper, path, _, _ in self.reports():
            width, height = PAPERS[paper]
            self.assertRegex(ran("pdfinfo", path), rf"Page size: +{width}(\.\d+)? x {height}")
            self.assertEqual(ran("pdfimages", "-list", path).splitlines()[2:], [])
            fonts = ran("pdffonts", path).splitlines()[2:]
            self.assertTrue(fonts)
            for font in fonts:  # columns: type, encoding, embedded, subset, with what text it is
                self.assertNotIn("Type 3", font)
                self.assertRegex(font, r"Identity-H +yes +\w+ +yes ")
            # The whole of such a font takes over 300 kB, also when packed; only the letters that are used go in.
            self.assertLess(path.stat().st_size, 150_000)

    def test_pictures_stay_on_their_page(self):
        for paper, path, _, _ in self.reports():
            width, height = PAPERS[paper]
            words = re.findall(r'<word xMin="(\S+)" yMin="(\S+)" xMax="(\S+)" yMax="(\S+)">', ran("pdftotext", "-bbox", path, "-"))
            self.assertGreater(len(words), 300)
            margin = 15 / 25.4 * 72 - 1.5  # what stands at the edge of a letter is not counted exactly
            for word in words:
                left, top, right, bottom = map(float, word)
                self.assertTrue(left >= margin and top >= margin and right <= width - margin and bottom <= height - margin + 6, word)


if __name__ == "__main__":
    unittest.main()
