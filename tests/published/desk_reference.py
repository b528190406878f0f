#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""Every row of the reference tables through the real halfcup-desk.

desk_reference.py PROGRAM SHARED_DIR

The tables were computed by other routes (Monte Carlo, adaptive integration, importance sampling, a second
implementation); they do not belong to the project, and the test is skipped (exit code 77) where they are absent.
Tolerances: integrals 1e-6 relative, as their precision is stated; Monte Carlo columns 5 of their own standard
errors; growth 5e-3 relative on loads (3e-2 where nothing was found), 2e-4 on growth, 2e-3 on chances; season 1e-7.
"""

import csv
import datetime
import io
import math
import pathlib
import subprocess
import sys

PROGRAM, SHARED = sys.argv[1], pathlib.Path(sys.argv[2])
FOLDER = SHARED / "reference"
if not FOLDER.is_dir():
    print(f"skipped: the reference tables are not there ({FOLDER}).")
    sys.exit(77)

failures, checks, worst = [], 0, {}


def table(name):
    with open(FOLDER / name, encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


def desk(verb, columns, rows, *options):
    """Answers of the program to rows given as lists, by column name."""
    text = io.StringIO()
    writer = csv.writer(text)
    writer.writerow(columns)
    writer.writerows(rows)
    done = subprocess.run([PROGRAM, verb, *options], input=text.getvalue(), capture_output=True, text=True, timeout=110,
                          check=False)
    if done.returncode != 0:
        failures.append(f"{verb}: exit code {done.returncode}: {done.stderr.strip()} {done.stdout[-600:]}")
    return list(csv.DictReader(io.StringIO(done.stdout)))


def near(what, kind, got, wanted, tolerance):
    """|got - wanted| <= tolerance; remembers how near the worst check of each kind came to its tolerance."""
    global checks
    checks += 1
    got, wanted = float(got or "nan"), float(wanted)
    if math.isinf(wanted) and got == wanted:
        return
    share = abs(got - wanted) / tolerance
    worst[kind] = max(worst.get(kind, 0), share)
    if not share <= 1:
        failures.append(f"{what}: {got!r} where the table has {wanted!r}, tolerance {tolerance:.3g}")


def washes():
    rows = table("wash_posterior.csv")
    answers = desk("assess", ["id", "mites", "bees", "bees_cv", "recovery", "recovery_sd", "jar_shape", "line"],
                   [[r["id"], r["k_mites"], r["bees_mean"], r["bees_cv"], r["recov_mean"], r["recov_sd"], r["phi_nb"].lower(),
                     r["threshold_per100"]] for r in rows])
    for row, answer in zip(rows, answers, strict=True):
        assert row["id"] == answer["id"]
        for ours, theirs in (("load_q05", "q05"), ("load_q50", "q50"), ("load_q95", "q95"), ("chance_over", "p_gt_T")):
            exact = float(row[theirs + "_int"])
            near(f"wash {row['id']} {theirs}", "wash, integral", answer[ours], exact, 1e-6 * exact + 1e-12)
            near(f"wash {row['id']} {theirs} (drawn)", "wash, drawn", answer[ours], row[theirs + "_mc"],
                 5 * float(row[theirs + "_mcse"]))


def efficacy():
    rows = table("efficacy_ratio.csv")
    names = ["before_mites", "before_bees", "after_mites", "after_bees"]
    theirs = ["pre_k", "pre_n", "post_k", "post_n"]
    value = lambda r, c: "" if r[c] == "NA" else r[c]
    answers = desk("efficacy", ["id", *names, *("control_" + n for n in names), "bees_cv", "jar_shape"],
                   [[r["id"], *(r[c] for c in theirs), *(value(r, "ctrl_" + c) for c in theirs), r["bees_cv"],
                     r["phi"].lower()] for r in rows])
    for row, answer in zip(rows, answers, strict=True):
        point = float(row["point_eff"])
        near(f"efficacy {row['id']} point", "efficacy, point", answer["efficacy_point"], point, 1e-7)
        for q in ("q05", "q50", "q95"):
            near(f"efficacy {row['id']} {q}", "efficacy, drawn", answer["efficacy_" + q], row[f"eff_{q}_mc"],
                 5 * float(row[f"eff_{q}_se"]))
        near(f"efficacy {row['id']} chance", "efficacy, drawn", answer["chance_over_90"], row["P_eff_gt90_mc"],
             5 * float(row["P_gt90_se"]))


def growth():
    series = table("growth_series.csv")
    rows = table("growth_posterior.csv")
    rows_in = [[s["id"], s["t_days"], s["k_mites"], s["n_bees"], "0.1",
                f"{100 * float(s['E_hundred_bees_eff']) / float(s['n_bees']):.12g}"] for s in series]
    zero = {s["id"] for s in series} - {s["id"] for s in series if int(s["k_mites"]) > 0}
    # The table's models: Poisson or a common jar shape; its phi_eff has the own spread of the scoop in it.
    for model in sorted({(r["model"], r["phi_eff"]) for r in rows}):
        ids = {r["id"]: r for r in rows if (r["model"], r["phi_eff"]) == model}
        poisson = model[1].lower() == "inf"
        if not poisson and abs(1 / (1 / 20 + 0.1 ** 2) - float(model[1])) > 1e-3 * float(model[1]):
            failures.append(f"growth: the table has a model this test does not know: {model}")
            continue
        mine = [[*r[:4], "0" if poisson else r[4], r[5]] for r in rows_in if r[0] in ids]
        answers = desk("outlook", ["colony", "day", "mites", "bees", "bees_cv", "recovery"], mine, "--line", "3",
                       "--jar-shape", "inf" if poisson else "20", "--growth-mean", ".021", "--growth-sd", ".010",
                       "--recovery-sd", "0", "--scoop-shared-sd", "0")
        for answer in answers:
            name = answer["colony"]
            row = ids.pop(name)
            near(f"growth {name} mean", "growth, r", answer["growth_mean"], row["r_mean"], 2e-4)
            near(f"growth {name} sd", "growth, r", answer["growth_sd"], row["r_sd"], 2e-4)
            for ours, theirs in (("load_now_", "lamlast_"), ("load_30d_", "lam30_")):
                for q in ("q05", "q50", "q95"):
                    wanted = float(row[theirs + q])
                    near(f"growth {name} {ours}{q}", "growth, load", answer[ours + q], wanted,
                         (3e-2 if name in zero else 5e-3) * wanted)
            for ours, theirs in (("chance_now", "P_now_gt3"), ("chance_14d", "P_cross14"), ("chance_30d", "P_cross30"),
                                 ("chance_60d", "P_cross60")):
                near(f"growth {name} {ours}", "growth, chance", answer[ours], row[theirs], 2e-3)
            for q in ("q10", "q50", "q90"):
                wanted, error = float(row[f"cross_{q}_d"]), float(row[f"cross_{q}_d_mcse"] or 0)
                if math.isfinite(wanted):
                    near(f"growth {name} cross_day_{q}", "growth, day", answer["cross_day_" + q], wanted,
                         max(0.2, 5e-3 * wanted, 5 * error))
        if ids:
            failures.append(f"growth: no answer for {sorted(ids)}")


def yards():
    rows = table("yard_mean_formula.csv")
    mine = [[r["id"], r["N"], k, n, "0.1"] for r in rows for k, n in zip(r["k"].split(), r["n"].split(), strict=True)]
    # The table's recovery is 0.95 with a spread of 0.03 and its jar shape 20; no error shared by scoops.
    answers = desk("yard", ["yard", "colonies", "mites", "bees", "bees_cv"], mine, "--line", "2", "--jar-shape", "20",
                   "--recovery", ".95", "--recovery-sd", ".03")
    for row, answer in zip(rows, answers, strict=True):
        assert (row["id"], row["m"]) == (answer["yard"], answer["washed"])
        for q in ("q05", "q50", "q95"):
            near(f"yard {row['id']} {q}", "yard", answer["mean_" + q], row[q], 1e-6 * float(row[q]))
        near(f"yard {row['id']} chance", "yard", answer["chance_over"], row["P_mean_gt2"], 1e-7)


# What the scenarios of the tables stand for, as numbers.md section 8 describes them.
TREATMENTS = {
    "S1": "", "S2": "whole 0.95 2025-08-01 42", "S4": "phoretic 0.90 2025-07-15 1", "S5": "whole 0.95 2025-09-15 42",
    "S8": "phoretic 0.95 2025-12-10 1",
}


def seasons():
    trace, rows = table("season_daily_trace.csv"), table("season_scenarios.csv")
    day = lambda doy: (datetime.date(2025, 1, 1) + datetime.timedelta(days=int(doy) - 1)).isoformat()
    wanted = {}
    for r in rows:
        band = r["growth"].split("_")[0]
        wanted.setdefault((r["scenario"], band), []).append(
            (day(r["doy"]), r["lambda_per100"], r["phoretic_mites"], r["total_mites"], r["phoretic_share"]))
    for r in trace:
        wanted.setdefault((r["scenario"], "base"), []).append(
            (day(r["day"]), r["lambda"], r["phoretic"], r["total"], r["share"]))
    known = {k: v for k, v in wanted.items() if k[0].split("_")[0] in TREATMENTS}
    for scenario in sorted({k[0] for k in wanted} - {k[0] for k in known}):
        failures.append(f"season: the table has a scenario this test does not know: {scenario}")
    answers = iter(desk("season", ["scenario", "growth", "wash_date", "load", "treatments", "carried_in", "dates"],
                        [[name, band, "2025-06-15", "1", TREATMENTS[name.split("_")[0]], "", ";".join(d[0] for d in days)]
                         for (name, band), days in known.items()]))
    for (name, band), days in known.items():
        for date, *figures in days:
            answer = next(answers, {})
            assert (answer["scenario"], answer["growth"], answer["date"]) == (name, band, date)
            for column, figure in zip(("load", "mites_on_bees", "mites_total", "share_on_bees"), figures, strict=True):
                # 1e-7, or the last digit the table prints.
                digits = len(figure.split(".")[1]) if "." in figure else 0
                near(f"season {name} {band} {date} {column}", "season", answer[column], figure,
                     1e-7 * abs(float(figure)) + 0.5 * 10.0 ** -digits)


for part in (washes, efficacy, growth, yards, seasons):
    before = checks
    part()
    print(f"{part.__name__}: {checks - before} figures")
print("nearest to its tolerance (1 would be at it):", {k: round(v, 4) for k, v in worst.items()})
if checks < 300:
    failures.append(f"only {checks} figures were compared: something is not being read.")
for failure in failures[:60]:
    print(failure)
print(f"{checks} figures, {len(failures)} failures")
sys.exit(1 if failures else 0)
