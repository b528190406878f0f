#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""From nothing: a yard is made where a real receiver lay, and known again. usage: recorded_log.py HALFCUP FOLDER

FOLDER holds recorded logs of real receivers, which are not part of the project.
"""

import os
import sys

from halfcup_journey import check, run, skip
from receiver import Receiver, distance_m, fixes, recorded
from wash_steps import count, first_start, the_wash, to_the_answer, to_the_count, to_the_shake

LOG = os.path.join(sys.argv[2], "still-187-fixes.nmea")


def recorded_log(stage):
    moments = recorded(LOG)
    places = list(fixes("".join(moments)))
    check(len(places) > 100, f"the log has {len(places)} fixes")
    mean = tuple(sum(column) / len(places) for column in zip(*places))
    receiver = Receiver(moments)

    stage.start("--position", receiver.setting)
    first_start(stage)
    stage.sees("Position known within")
    stage.press("Make a yard here")
    stage.write("Name of the yard", "Behind the mill")
    stage.press("Keep this yard")
    stage.write("Add colonies", "4, 7")
    stage.press("Add")
    stage.sees("2 colonies: 4, 7")
    yard = stage.rows("SELECT * FROM yard")[0]
    check(yard["name"] == "Behind the mill" and yard["demo"] == 0, f"the yard: {dict(yard)}")
    away = distance_m(mean, (yard["latitude_deg"], yard["longitude_deg"]))
    check(away < 10, f"the yard was made {away:.1f} m from the log's mean")
    stage.quit()

    stage.start("--position", receiver.setting)
    stage.sees("You are here, within")
    to_the_shake(stage, about_the_position="fixes")
    to_the_count(stage)
    count(stage, 1, 3)
    to_the_answer(stage)
    stage.sees("About ")
    sample = the_wash(stage)
    check(sample["position_state"] == "stamped", f"the position: {sample['position_state']}")
    check(sample["yard_id"] == yard["id"], "the wash belongs to another yard")
    stamped = distance_m(mean, (sample["latitude_deg"], sample["longitude_deg"]))
    check(stamped < 10, f"the stamp lies {stamped:.1f} m from the log's mean")
    print(f"yard made {away:.2f} m, sample stamped {stamped:.2f} m from the mean of {len(places)} fixes")


if not os.path.exists(LOG):
    skip("the recorded logs are not on this machine")
run(recorded_log)
