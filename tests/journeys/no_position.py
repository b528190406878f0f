#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""A phone without a position: the wash goes on and the record says so. usage: no_position.py HALFCUP"""

from halfcup_journey import check, run
from wash_steps import count, demo_records, the_wash, to_the_answer, to_the_count, to_the_shake


def no_position(stage):
    demo_records(stage)
    stage.start("--position", "none")
    to_the_shake(stage, about_the_position="The wash goes on without")
    to_the_count(stage)
    count(stage, 1, 2)
    to_the_answer(stage)
    stage.sees("About 0.")
    sample = the_wash(stage)
    check((sample["state"], sample["mites"]) == ("finished", 2), f"{sample['state']} with {sample['mites']} mites")
    check(sample["position_state"] in ("no_source", "no_fix"), f"the position: {sample['position_state']}")
    for field in ("latitude_deg", "longitude_deg", "fix_accuracy_m"):
        check(sample[field] is None, f"{field} is {sample[field]} where there is no position")


run(no_position)
