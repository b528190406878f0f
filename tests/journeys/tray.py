#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""Eight jars scooped in a row, washed in another order, the program killed twice. usage: tray.py HALFCUP"""

import time

from halfcup_journey import check, run
from receiver import METRES_PER_DEGREE, Receiver, distance_m, invented
from wash_steps import count, first_start, to_the_answer, to_the_count

FIRST = (53.4, 19.9)  # nobody keeps bees there
APART_M = 16
JARS = 8


def place(number):
    """Hives in a row, north of each other."""
    return (FIRST[0] + (number - 1) * APART_M / METRES_PER_DEGREE, FIRST[1])


def make_the_yard(stage, receiver):
    stage.start("--position", receiver.setting)
    first_start(stage)
    stage.sees("Position known within")
    stage.press("Make a yard here")
    stage.write("Name of the yard", "Behind the mill")
    stage.press("Keep this yard")
    stage.write("Add colonies", ", ".join(str(number) for number in range(1, JARS + 1)))
    stage.press("Add")
    stage.sees(f"{JARS} colonies")
    stage.quit()


def scoop(stage, receiver, number):
    """The bees of the next colony are in the jar, and the phone knows where it is."""
    receiver.moments = list(invented(*place(number), scatter_m=1.0, minutes_on=number))
    stage.press(f"Wash colony {number}")
    stage.press("Queen seen and safe")
    stage.press("Scooped")
    stage.sees("Wash it later")
    stage.sees("Position within")


def into_the_tray(stage, number):
    stage.press("Wash it later")
    stage.press("Into the tray")
    stage.sees("In the tray")
    stage.tab_to(f"Jar {number}.", begins=True)


def take_jar(stage, number):
    stage.tab_to(f"Jar {number}.", begins=True)
    stage.press(f"Jar {number}.", begins=True)
    stage.sees(f"Jar {number}, colony {number}")
    stage.press("Lid on: start the shake")
    to_the_count(stage)


def mites_of(number):
    return number % 3 + 1


def tray(stage):
    receiver = Receiver(invented(*place(1), scatter_m=1.0))
    make_the_yard(stage, receiver)
    stage.start("--position", receiver.setting)
    began = time.time()
    for number in range(1, JARS + 1):
        scoop(stage, receiver, number)
        if number == 5:  # the phone dies with bees in an unlabelled jar
            stage.wait(lambda: stage.rows("SELECT 1 FROM sample WHERE jar IS NULL AND position_state = 'stamped'"),
                       "the position of the fifth jar on the disk")
            stage.kill()
            stage.start("--position", receiver.setting)
            stage.sees("Wash it later")  # it opens there, without a touch
        into_the_tray(stage, number)
        stage.press("Back")
    took = time.time() - began
    check(took < 120, f"eight jars took {took:.0f} s to scoop")

    order = [6, 2, 8, 1, 7, 3, 5, 4]
    for nth, number in enumerate(order):
        stage.press(f"{JARS - nth} jar" + ("s wait" if nth < JARS - 1 else " waits"), begins=True)
        take_jar(stage, number)
        if nth == 2:  # and again in the middle of a count
            count(stage, 1, 1)
            stage.kill()
            stage.start("--position", "none")
            stage.button("Count one mite")
            stage.sees(f"Jar {number}, colony {number}")
            count(stage, 2, mites_of(number))
        else:
            count(stage, 1, mites_of(number))
        to_the_answer(stage)
        stage.sees("on every 100 bees")
        stage.press("Back")
    check(not stage.rows("SELECT 1 FROM sample WHERE state = 'draft'"), "a jar is left")

    rows = stage.rows("SELECT sample.*, colony.label FROM sample JOIN colony ON colony.id = sample.colony_id"
                      " ORDER BY scooped_at_ms")
    check([row["label"] for row in rows] == [str(number) for number in range(1, JARS + 1)],
          f"in the order of their scoops: {[row['label'] for row in rows]}")
    check(rows[-1]["scooped_at_ms"] - rows[0]["scooped_at_ms"] < 120_000, "not within two minutes")
    check([row["label"] for row in sorted(rows, key=lambda row: row["finished_at_ms"])] == [str(n) for n in order],
          "they were not counted in the order in which they were taken up")
    farthest = 0.0
    for row in rows:
        number = int(row["label"])
        check(row["jar"] == row["label"], f"jar {row['jar']} is of colony {row['label']}")
        check((row["state"], row["mites"]) == ("finished", mites_of(number)),
              f"jar {number}: {row['state']} with {row['mites']} mites")
        check(row["scooped_at_ms"] / 1000 < began + took, f"jar {number} has the time of its wash")
        check(row["position_state"] == "stamped", f"jar {number}: position {row['position_state']}")
        away = distance_m(place(number), (row["latitude_deg"], row["longitude_deg"]))
        check(away < APART_M / 3, f"jar {number} is stamped {away:.1f} m from its hive")
        farthest = max(farthest, away)
    print(f"scooped in {took:.0f} s, stamped within {farthest:.1f} m of their hives")


run(tray)
