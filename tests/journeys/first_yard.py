#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""From nothing: the first yard is made where the keeper stands, and is the one that Here shows then.
usage: first_yard.py HALFCUP"""

from halfcup_journey import check, run
from receiver import Receiver, distance_m, invented
from wash_steps import first_start

PLACE = (53.092, 19.601)  # invented


def first_yard(stage):
    receiver = Receiver(invented(*PLACE))
    stage.start("--position", receiver.setting)
    first_start(stage)
    stage.sees("Position known within")
    stage.press("Make a yard here")
    stage.write("Name of the yard", "Behind the mill")
    stage.press("Keep this yard")
    stage.write("Add colonies", "4, 7")
    stage.press("Add")
    stage.sees("2 colonies: 4, 7")
    stage.press("Done")
    stage.sees("Wash colony 4")
    stage.sees("You are here, within")
    stage.sees("Behind the mill")
    yard = stage.rows("SELECT * FROM yard")[0]
    away = distance_m(PLACE, (yard["latitude_deg"], yard["longitude_deg"]))
    check(away < 10, f"the yard was made {away:.1f} m from the receiver's place")


run(first_yard)
