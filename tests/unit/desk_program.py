#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""The real halfcup-desk on real files: what it answers, what it says to bad input, what it needs of memory.

desk_program.py PROGRAM
"""

import csv
import io
import os
import resource
import subprocess
import sys
import tempfile
import unittest

PROGRAM = sys.argv.pop(1)
VERBS = ("assess", "outlook", "efficacy", "yard", "season")
# Columns and a good row of each verb.
GOOD = {
    "assess": ("mites,bees", "9,300"),
    "outlook": ("colony,day,mites", "A,1,2"),
    "efficacy": ("before_mites,after_mites", "20,2"),
    "yard": ("yard,colonies,mites", "Y,8,3"),
    "season": ("wash_date,load,dates", "2026-06-15,1,2026-07-15"),
}


def call(*words, data=b""):
    if isinstance(data, str):
        data = data.encode()
    done = subprocess.run([PROGRAM, *words], input=data, capture_output=True, timeout=60, check=False)
    return done.returncode, done.stdout.decode("utf-8", "surrogateescape"), done.stderr.decode("utf-8", "surrogateescape")


def rows(text):
    return list(csv.DictReader(io.StringIO(text, newline=""), strict=True))


class Calls(unittest.TestCase):
    def test_help_of_each_verb(self):
        for verb in VERBS:
            code, out, err = call(verb, "--help")
            self.assertEqual((code, err), (0, ""))
            self.assertIn(f"usage: halfcup-desk {verb}", out)
            for column in GOOD[verb][0].split(","):
                self.assertIn(column, out)
            self.assertIn("note", out)
        code, out, err = call("--help")
        self.assertEqual((code, err), (0, ""))
        for verb in VERBS:
            self.assertIn(verb, out)

    def test_wrong_calls(self):
        for words in ((), ("wash",), ("assess", "--line", "3"), ("assess", "a.csv", "b.csv"), ("outlook", "--line"),
                      ("outlook", "--line", "three"), ("outlook", "--line", "0"), ("outlook", "--line=-1"),
                      ("outlook", "--line", "nan"), ("outlook", "--growth-sd", "0"), ("yard", "--recovery", "1.5"),
                      ("yard", "--line", ""), ("season", "--hemisphere", "east"), ("outlook", "-x")):
            code, out, err = call(*words, data="")
            self.assertEqual((code, out), (2, ""), words)
            self.assertIn("halfcup-desk", err, words)

    def test_files_that_are_not_there(self):
        for name in ("/nowhere/at/all.csv", tempfile.gettempdir()):
            code, out, err = call("assess", name)
            self.assertEqual((code, out), (1, ""))
            self.assertIn("cannot be opened", err)

    def test_a_file_and_standard_input_give_the_same(self):
        for verb, (header, row) in GOOD.items():
            text = f"{header}\r\n{row}\r\n"
            with tempfile.NamedTemporaryFile(suffix=" é.csv") as file:
                file.write(text.encode())
                file.flush()
                from_file = call(verb, file.name)
            self.assertEqual(from_file, call(verb, data=text))
            self.assertEqual(from_file, call(verb, "-", data=text))
            self.assertEqual(from_file, call(verb, data=b"\xef\xbb\xbf" + text.replace("\r", "").encode()))
            self.assertEqual(from_file[0], 0, verb)
            self.assertTrue(from_file[1].endswith("\r\n"))

    def test_an_answer_that_cannot_be_written_is_no_success(self):
        if not os.path.exists("/dev/full"):
            self.skipTest("there is no /dev/full here.")
        with open("/dev/full", "wb") as full:
            done = subprocess.run([PROGRAM, "assess"], input=b"mites\n9\n", stdout=full, stderr=subprocess.PIPE,
                                  check=False)
        self.assertEqual(done.returncode, 1)
        self.assertIn(b"could not be written", done.stderr)


class Tables(unittest.TestCase):
    def test_unusable_tables(self):
        for verb, (header, row) in GOOD.items():
            for data, says in (("", "nothing to read"), ("\n\n", "nothing to read"),
                               ("other\n1\n", "There is no column"), (f"{header},{header.split(',')[0]}\n{row},1\n", "both named"),
                               (f"\"{header}\n{row}\n", "names the columns"), (b"\x00\xff\xfe\x00", "There is no column")):
                code, out, err = call(verb, data=data)
                self.assertEqual((code, out), (1, ""), (verb, data))
                self.assertIn(says, err)

    def test_only_a_header(self):
        for verb, (header, _) in GOOD.items():
            code, out, err = call(verb, data=header + "\n")
            self.assertEqual((code, err, out.count("\n")), (0, "", 1))

    def test_unknown_columns_are_handed_through_in_front(self):
        code, out, _ = call("assess", data='hive no,mites,"re ""mark""",bees\n"4, left",9,"two\nlines",300\n')
        self.assertEqual(code, 0)
        names = next(csv.reader(io.StringIO(out)))
        self.assertEqual(names, ["hive no", 're "mark"', "load_q05", "load_q50", "load_q95", "chance_over", "standing", "note"])
        row = rows(out)[0]
        self.assertEqual((row["hive no"], row['re "mark"']), ("4, left", "two\nlines"))

    def test_names_of_the_columns_out(self):
        outs = {
            "assess": "load_q05,load_q50,load_q95,chance_over,standing,note",
            "outlook": "colony,washes,growth_mean,growth_sd,load_now_q05,load_now_q50,load_now_q95,load_30d_q05,load_30d_q50,"
                       "load_30d_q95,chance_now,chance_14d,chance_30d,chance_60d,cross_day_q10,cross_day_q50,cross_day_q90,note",
            "efficacy": "efficacy_point,efficacy_q05,efficacy_q50,efficacy_q95,chance_over_90,note",
            "yard": "yard,washed,mean_q05,mean_q50,mean_q95,chance_over,note",
            "season": "scenario,growth,date,load,mites_on_bees,mites_total,share_on_bees,note",
        }
        for verb, (header, row) in GOOD.items():
            _, out, _ = call(verb, data=f"{header}\n{row}\n")
            self.assertEqual(out.split("\r\n")[0], outs[verb])


class BadRows(unittest.TestCase):
    def test_each_number_of_each_verb(self):
        """NaN, infinity, negative, text, huge, comma: empty results, a sentence with row and column, the rest answered."""
        numbers = {
            "assess": ("mites", "bees", "bees_cv", "recovery", "recovery_sd", "jar_shape", "line"),
            "outlook": ("day", "mites", "bees", "bees_cv", "recovery"),
            "efficacy": ("before_mites", "before_bees", "after_mites", "after_bees", "control_before_mites",
                         "control_before_bees", "control_after_mites", "control_after_bees", "bees_cv", "jar_shape"),
            "yard": ("colonies", "mites", "bees", "bees_cv"),
            "season": ("load",),
        }
        usual = {"mites": "9", "bees": "300", "bees_cv": ".1", "recovery": ".9", "recovery_sd": ".03", "jar_shape": "7",
                 "line": "3", "day": "5", "colonies": "8", "load": "1", "wash_date": "2026-06-15", "dates": "2026-07-15"}
        for verb, names in numbers.items():
            first = {"outlook": ["colony"], "yard": ["yard"], "season": ["wash_date", "dates"]}.get(verb, [])
            header = first + list(names)
            for name in names:
                for bad in ("nan", "NaN", "-1e5", "nine", "1e999", "-inf", '"1,5"', "1e300", "--", "９"):
                    if bad in ("-1e5",) and name == "day" or bad == "1e300" and name == "jar_shape":
                        continue
                    if bad == "-1e5" and name == "load":
                        bad = "-1"
                    lines = [",".join(header)]
                    for number, value in enumerate((None, bad, None)):
                        cells = {n: usual.get(n.split("_")[-1] if n not in usual else n, "x") for n in header}
                        for key in ("colony", "yard"):
                            if key in cells:
                                cells[key] = f"group {number}"
                        if value is not None:
                            cells[name] = value
                        lines.append(",".join(cells[n] for n in header))
                    code, out, err = call(verb, data="\n".join(lines) + "\n")
                    answers = rows(out)
                    self.assertEqual((code, len(answers)), (1, 3), (verb, name, bad, out, err))
                    self.assertIn(f"Row 3, column {header.index(name) + 1} ({name})", answers[1]["note"])
                    results = [k for k in answers[1] if k not in ("note", "colony", "yard", "scenario", "growth")]
                    self.assertTrue(all(answers[1][k] == "" for k in results), answers[1])
                    for other in (0, 2):
                        self.assertNotIn("Row", answers[other]["note"])
                        self.assertTrue(all(answers[other][k] != "" for k in results), (verb, answers[other]))
                    self.assertIn("could not be used", err)

    def test_more_mites_than_bees_is_legal_and_unusual(self):
        code, out, _ = call("assess", data="mites,bees\n400,300\n")
        self.assertEqual(code, 0)
        self.assertIn("Unusual", rows(out)[0]["note"])
        self.assertAlmostEqual(float(rows(out)[0]["load_q50"]), 141.294, delta=0.01)

    def test_a_row_that_is_not_csv(self):
        code, out, _ = call("assess", data='hive,mites\n1,9\n"2,9\n3,"9"x\n4,9,9\n5\n6,9\n')
        answers = rows(out)
        self.assertEqual((code, [a["load_q50"] != "" for a in answers]), (1, [True, False, False, False, False, True]))
        for number, answer in enumerate(answers[1:5], 3):
            self.assertIn(f"Row {number}:", answer["note"])

    def test_rows_of_one_colony_have_to_stand_together(self):
        code, out, _ = call("outlook", data="colony,day,mites\nA,1,2\nB,1,2\nA,30,4\n")
        answers = rows(out)
        self.assertEqual((code, [a["colony"] for a in answers]), (1, ["A", "B", "A"]))
        self.assertIn("stand together", answers[2]["note"])
        self.assertEqual(answers[2]["load_now_q50"], "")

    def test_a_lost_row_is_told_to_both_neighbours(self):
        code, out, _ = call("outlook", data='colony,day,mites\nA,1,2\n"A,20,4\nB,1,3\nC,1,3\n')
        answers = {a["colony"]: a for a in rows(out)}
        self.assertEqual(code, 1)
        self.assertIn("Row 3", answers["A"]["note"])
        self.assertIn("Row 3", answers["B"]["note"])
        self.assertNotIn("Row 3", answers["C"]["note"])

    def test_one_bad_row_leaves_no_answer_for_its_colony(self):
        code, out, _ = call("outlook", data="colony,day,mites\nA,1,2\nA,20,x\nB,1,3\n")
        answers = rows(out)
        self.assertEqual((code, answers[0]["load_now_q50"], answers[1]["note"][:7]), (1, "", "Assumed"))

    def test_washes_in_any_order_give_the_same(self):
        one = call("outlook", data="colony,day,mites\nA,1,2\nA,20,4\nA,40,9\n")
        self.assertEqual(one, call("outlook", data="colony,day,mites\nA,40,9\nA,1,2\nA,20,4\n"))

    def test_control_columns_all_or_none(self):
        header = "before_mites,after_mites,control_before_mites,control_before_bees,control_after_mites,control_after_bees\n"
        code, out, _ = call("efficacy", data=header + "20,2,,,,\n20,2,18,300,25,300\n20,2,18,300,25,\n")
        answers = rows(out)
        self.assertEqual(code, 1)
        self.assertIn("control_after_bees", answers[2]["note"])
        self.assertNotEqual(answers[0]["efficacy_q50"], answers[1]["efficacy_q50"])

    def test_yards(self):
        code, out, _ = call("yard", data="yard,colonies,mites\nA,1,2\nA,1,2\nB,8,1\nB,9,1\nC,0,1\nD,,1\nE,8,1\n")
        notes = [a["note"] for a in rows(out)]
        self.assertEqual(code, 1)
        for note, says in zip(notes, ("more colonies washed", "8 and 9", "at least one", "nothing is written")):
            self.assertIn(says, note)
        self.assertEqual(notes[4], "One colony says little about a yard.")

    def test_season_cells(self):
        header = "scenario,growth,wash_date,load,treatments,carried_in,dates\n"
        for row, column in (("S,slow,2026-06-15,1,,,2026-07-15", "growth"), ("S,,15.6.,1,,,2026-07-15", "wash_date"),
                            ("S,,2026-06-15,,,,2026-07-15", "load"), ("S,,2026-06-15,1,half,,2026-07-15", "treatments"),
                            ("S,,2026-06-15,1,,5,2026-07-15", "carried_in"), ("S,,2026-06-15,1,,,", "dates"),
                            ("S,,2026-06-15,1,,,2026-06-14", "dates"), ("S,,2026-06-15,1,,,2046-06-14", "dates")):
            code, out, _ = call("season", data=header + row + "\n")
            answer = rows(out)[0]
            self.assertEqual((code, answer["scenario"], answer["load"]), (1, "S", ""), row)
            self.assertIn(f"({column})", answer["note"])

    def test_no_answer_hangs_on_chance_or_on_what_came_before(self):
        text = "mites,bees\n" + "".join(f"{k},{n}\n" for k in (0, 3, 9, 3, 0) for n in (300, "", 300))
        one, two = call("assess", data=text), call("assess", data=text)
        self.assertEqual(one, two)
        answers = rows(one[1])
        self.assertEqual(answers[0], answers[2])
        self.assertEqual(answers[3], answers[9])


class Size(unittest.TestCase):
    def test_memory_does_not_grow_with_the_file(self):
        """A tenfold file must not need more memory; 16 MB above the small one would be a table held in memory."""
        most = []
        for count in (20000, 400000):
            with tempfile.TemporaryFile() as data:
                # In pieces: what this script itself needs is counted with the program it starts.
                data.write(b"id,mites,bees\n")
                for i in range(count):
                    data.write(b"%d,%d,%d\n" % (i, i % 40, 250 + i % 7))
                data.seek(0)
                process = subprocess.Popen([PROGRAM, "assess"], stdin=data, stdout=subprocess.DEVNULL)
                _, status, usage = os.wait4(process.pid, 0)
                process.returncode = os.waitstatus_to_exitcode(status)
                self.assertEqual(process.returncode, 0)
                most.append(usage.ru_maxrss)
        self.assertLess(most[1] - most[0], 16 * 1024)


if __name__ == "__main__":
    resource.setrlimit(resource.RLIMIT_CORE, (0, 0))
    unittest.main(verbosity=1)
