#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""The figures printed on assets/pages/what-the-figure-means.md are those the program gives.

page_figures.py PROGRAM ROOT
"""

import csv
import io
import pathlib
import re
import subprocess
import sys

page = (pathlib.Path(sys.argv[2]) / "assets/pages/what-the-figure-means.md").read_text(encoding="utf-8")
rows = re.findall(r"^\| (\d+) \| ([\d.]+) \| ([\d.]+) to ([\d.]+) \| (below )?(\d+) % \|$", page, re.M)
done = subprocess.run([sys.argv[1], "assess"], input="mites\n" + "".join(r[0] + "\n" for r in rows), capture_output=True,
                      text=True, check=False)
answers = list(csv.DictReader(io.StringIO(done.stdout)))
failures = []
for (mites, load, low, high, below, percent), answer in zip(rows, answers, strict=True):
    # The lower end for a count of nothing is shown as 0.
    ours = (f"{float(answer['load_q50']):.1f}", "0" if mites == "0" else f"{float(answer['load_q05']):.1f}",
            f"{float(answer['load_q95']):.1f}")
    chance = 100 * float(answer["chance_over"])
    if ours != (load, low, high) or not (chance < float(percent) if below else f"{chance:.0f}" == percent):
        failures.append(f"{mites} mites: the page says {load}, {low} to {high}, {percent} %; the program {ours}, {chance:.2f} %")
if len(rows) < 8 or done.returncode != 0:
    failures.append(f"only {len(rows)} rows were found on the page, or the program failed: {done.stderr}")
for failure in failures:
    print(failure)
print(f"{len(rows)} rows of the page, {len(failures)} failures")
sys.exit(1 if failures else 0)
