#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""The program is killed at the 7th mite and started again. usage: killed_at_the_seventh.py HALFCUP"""

from halfcup_journey import check, run
from wash_steps import acts, count, demo_records, the_wash, to_the_answer, to_the_count, to_the_shake


def killed_at_the_seventh(stage):
    demo_records(stage)
    stage.start("--position", "none")
    to_the_shake(stage)
    to_the_count(stage)
    count(stage, 1, 7)
    stage.kill()
    killed = the_wash(stage)
    check(killed["state"] == "draft", f"after the kill the sample is {killed['state']}")
    check(killed["step"] == "count", f"after the kill the sample is at {killed['step']}")

    stage.start("--position", "none")
    stage.button("Count one mite")  # it opens at the count, without a touch
    stage.sees("7 mites")
    check(acts(stage, killed["id"]) == 7 * ["tap"], "the seven touches are not on the disk")
    count(stage, 8, 9)
    to_the_answer(stage)
    stage.sees("Over your line")
    sample = the_wash(stage)
    check(sample["id"] == killed["id"], "another sample was begun")
    check((sample["state"], sample["mites"]) == ("finished", 9), f"{sample['state']} with {sample['mites']} mites")
    check(acts(stage, sample["id"]) == 9 * ["tap"], f"the acts on the disk: {acts(stage, sample['id'])}")
    drafts = stage.rows("SELECT id FROM sample WHERE state = 'draft'")
    check(not drafts, f"{len(drafts)} drafts are left")
    verdict = stage.rows("PRAGMA integrity_check")[0][0]
    check(verdict == "ok", f"integrity check: {verdict}")


run(killed_at_the_seventh)
