#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""A receiver at the second yard of the demo: Here knows it, and the scoop is stamped. usage: replayed_log.py HALFCUP"""

from halfcup_journey import check, run
from receiver import Receiver, distance_m, invented
from wash_steps import count, demo_records, the_wash, to_the_answer, to_the_count, to_the_shake

LONG_FURROW = (53.092, 19.601)  # demo-data/make.py; without a position the program opens at the other yard


def replayed_log(stage):
    demo_records(stage)
    receiver = Receiver(invented(*LONG_FURROW))
    stage.start("--position", receiver.setting)
    stage.sees("Long Furrow")
    stage.sees("You are here, within")
    to_the_shake(stage, about_the_position="fixes")  # "Position within 6 m, from 15 fixes"
    to_the_count(stage)
    count(stage, 1, 3)
    to_the_answer(stage)
    stage.sees("About ")

    sample = the_wash(stage)
    check(receiver.connections > 0, "nobody asked the receiver")
    check((sample["state"], sample["mites"]) == ("finished", 3), f"{sample['state']} with {sample['mites']} mites")
    check(sample["position_state"] == "stamped", f"the position: {sample['position_state']}")
    away = distance_m(LONG_FURROW, (sample["latitude_deg"], sample["longitude_deg"]))
    check(away < 10, f"the stamp lies {away:.1f} m from the receiver's place")
    check(0 < sample["fix_accuracy_m"] < 30, f"the accuracy: {sample['fix_accuracy_m']} m")
    check(sample["fix_count"] > 1, f"from {sample['fix_count']} fixes")
    check(not sample["fix_moving"], "a receiver that lies still counts as moving")
    check(sample["fix_source"] == receiver.setting, f"the source: {sample['fix_source']}")
    yard = stage.rows("SELECT name FROM yard WHERE id = ?", sample["yard_id"])[0]["name"]
    check(yard == "Long Furrow", f"the wash belongs to {yard}")
    print(f"stamped {away:.2f} m from the place, from {sample['fix_count']} fixes")


run(replayed_log)
