#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""A backup, more washes, and the backup put back, through the real pages. usage: backup_restore.py HALFCUP

What is on the disk is read with Python's own sqlite3.
"""

import glob
import os

from halfcup_journey import check, run
from wash_steps import count, demo_records, to_the_answer, to_the_count, to_the_shake

FINISHED = "SELECT count(*) AS n FROM sample WHERE state = 'finished'"


def wash(stage, mites):
    to_the_shake(stage)
    to_the_count(stage)
    count(stage, 1, mites)
    to_the_answer(stage)
    stage.sees("on every 100 bees")
    stage.press("Back")


def to_the_backups(stage):
    stage.press("Season")
    stage.press("Share")
    stage.tab_to("Keep safe", begins=True)
    stage.press("Keep safe", begins=True)
    stage.sees("A backup is one file")


def counted(stage, path=None):
    return stage.rows(FINISHED, path=path)[0]["n"]


def identity(stage, path=None):
    return stage.rows("SELECT value FROM setting WHERE name = 'device_id'", path=path)[0]["value"]


def backup_restore(stage):
    demo_records(stage)
    stage.start("--position", "none")
    to_the_backups(stage)
    stage.sees("No backup yet")
    stage.press("Make a backup")
    stage.sees("Written and checked")
    stage.press("Back")
    stage.press("Back")
    stage.press("Back")
    backups = glob.glob(os.path.join(stage.folder, "**", "*.halfcup-backup"), recursive=True)
    check(len(backups) == 1, f"there are {len(backups)} backups: {backups}")
    backup = backups[0]
    before = counted(stage)
    check(counted(stage, backup) == before, "the backup holds other washes")
    check(stage.rows("PRAGMA integrity_check", path=backup)[0][0] == "ok", "the backup is not sound")

    wash(stage, 3)
    wash(stage, 1)
    check(counted(stage) == before + 2, f"{counted(stage)} washes, not two more than {before}")
    device = identity(stage)

    to_the_backups(stage)
    stage.sees("2 washes in no backup yet")
    name = os.path.basename(backup)
    stage.tab_to("Make a backup")
    row = stage.wait(lambda: [its_name for _, its_name, _ in stage.items() if f". {name}" in its_name], "the backup's row")[0]
    stage.press(row)
    stage.sees("Every row was checked")
    stage.sees(f"{before} washes")
    stage.press("Put this one back")
    stage.sees("is not thrown away")
    stage.press("Put it back")

    # Another window of the same program, with a sentence first.
    stage.sees("Please read")
    stage.sees(f"{name} was put back: {before} washes are in your records now.")
    stage.press("Understood")
    stage.sees("Alder Bend")
    check(counted(stage) == before, f"{counted(stage)} washes, not {before} as in the backup")
    check(identity(stage) != device, "it still calls itself the phone that made the backup")
    aside = glob.glob(stage.database + ".before-restore-*")
    check(len(aside) == 1, f"kept aside: {aside}")
    check(counted(stage, aside[0]) == before + 2, "what was kept aside lacks the two washes")
    check(identity(stage, aside[0]) == device, "what was kept aside is another phone's")
    check(counted(stage, backup) == before, "the backup itself was changed")

    # And it goes on: a wash, and a start after it.
    wash(stage, 2)
    stage.quit()
    stage.start("--position", "none")
    stage.sees("Alder Bend")
    check(counted(stage) == before + 1, "the wash after it is lost")
    check("warning" not in stage.what_it_said().lower(), stage.what_it_said())


run(backup_restore)
