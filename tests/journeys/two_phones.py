#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""Two keepers with a phone each: one washes and hands a file on, the other takes it in, takes it back and in
again; then both rename one colony, and the later name stands on both. usage: two_phones.py HALFCUP

What is on the disks is read with Python's sqlite3.
"""

import glob
import os

from halfcup_journey import check, run
from receiver import Receiver, invented
from wash_steps import count, first_start, to_the_answer, to_the_count, to_the_shake

PLACE = (53.092, 19.601)  # invented
KEYSYM_END = 0xFF57
KEYSYM_BACKSPACE = 0xFF08
MITES = 2


def use(stage, phone):
    """From now on the program runs on that phone's records."""
    stage.database = os.path.join(stage.folder, f"{phone}.db")


def rewrite(stage, field, old, new):
    """Key by key, as write() does, in place of what is in the field."""
    def look():
        return [item for item, name, role in stage.items()
                if name == field and role in (stage.atspi.ROLE_TEXT, stage.atspi.ROLE_ENTRY)]
    item = stage.wait(look, f"the field '{field}'")[0]
    there = lambda: item.queryText().getText(0, -1)
    check(there() == old, f"in the field '{field}' is '{there()}', not '{old}'")
    item.queryComponent().grabFocus()
    stage.wait(lambda: item.getState().contains(stage.atspi.STATE_FOCUSED), f"the keyboard in '{field}'")
    stage.atspi.Registry.generateKeyboardEvent(KEYSYM_END, None, stage.atspi.KEY_SYM)
    for _ in old:
        stage.atspi.Registry.generateKeyboardEvent(KEYSYM_BACKSPACE, None, stage.atspi.KEY_SYM)
    stage.wait(lambda: there() == "", f"an empty field '{field}'")
    stage.atspi.Registry.generateKeyboardEvent(0, new, stage.atspi.KEY_STRING)
    stage.wait(lambda: there() == new, f"'{new}' in the field '{field}'")


def rename(stage, old, new):
    stage.press(f"Colony {old}", begins=True)
    stage.tab_to("Change its number or name")
    stage.press("Change its number or name")
    rewrite(stage, "Number or name", old, new)
    stage.press("Keep")
    stage.sees(f"Colony {new}")
    stage.press("Back")


def written(stage):
    """Two touches from Here, and the path of the file."""
    before = set(glob.glob(os.path.join(stage.folder, "Documents", "Halfcup", "*.halfcup")))
    stage.press("Share")
    stage.press("Write everything for another phone")
    stage.sees("Written to ")
    new = set(glob.glob(os.path.join(stage.folder, "Documents", "Halfcup", "*.halfcup"))) - before
    check(len(new) == 1, f"new files: {new}")
    stage.press("Back")
    return new.pop()


def labels(stage):
    return sorted(row["label"] for row in stage.rows("SELECT label FROM colony"))


def wash(stage):
    return [tuple(row) for row in stage.rows(
        "SELECT sample.id, state, mites, bees_mean, load_q50, latitude_deg, longitude_deg, label FROM sample"
        " JOIN colony ON colony.id = sample.colony_id ORDER BY sample.id")]


def first_phone_washes(stage):
    receiver = Receiver(invented(*PLACE))
    stage.start("--position", receiver.setting)
    first_start(stage)
    stage.sees("Position known within")
    stage.press("Make a yard here")
    stage.write("Name of the yard", "Behind the mill")
    stage.press("Keep this yard")
    stage.write("Add colonies", "4, 7")
    stage.press("Add")
    stage.press("Done")
    to_the_shake(stage, first="Wash colony 4", begins=False)
    to_the_count(stage)
    count(stage, 1, MITES)
    to_the_answer(stage)
    stage.sees("on every 100 bees")
    stage.press("Back")
    path = written(stage)
    stage.quit()
    return path


def two_phones(stage):
    use(stage, "a")
    path = first_phone_washes(stage)
    there = wash(stage)
    check(len(there) == 1 and there[0][1:3] == ("finished", MITES), f"washed: {there}")

    use(stage, "b")
    stage.start("--position", "none", path)
    stage.sees("What it brings")
    stage.sees("4 records new or changed. Nothing of yours is lost.")
    stage.sees("1 yard, 2 colonies, 1 wash")
    check(stage.rows("SELECT * FROM yard") == [], "something was written before the last touch")
    stage.press("Take it in")
    stage.sees("4 records taken in.")
    check(wash(stage) == there, f"{wash(stage)} is not {there}")
    stage.press("Take it back")
    stage.sees("Take it back?")
    stage.press("Take it back")
    stage.sees("was taken back")
    check(wash(stage) == [] and labels(stage) == [], "something of it is left")
    stage.press("Back")
    stage.quit()

    stage.start("--position", "none", path)
    stage.press("Take it in")
    stage.sees("4 records taken in.")
    stage.press("Done")
    first_start(stage)  # what the app is not is read on this phone too
    stage.sees("Behind the mill")
    stage.press("Colony 4", begins=True)
    stage.sees("per 100")  # the other phone's wash, on its colony's page
    stage.press("Back")
    stage.quit()

    # Meanwhile, and each on its own phone: the same colony gets two names.
    use(stage, "a")
    stage.start("--position", "none")
    rename(stage, "4", "4 by the gate")
    stage.quit()
    use(stage, "b")
    stage.start("--position", "none")
    rename(stage, "4", "4 west")
    from_b = written(stage)
    stage.quit()

    use(stage, "a")
    stage.start("--position", "none", from_b)
    stage.sees("Changed on both phones")
    stage.sees("Label: yours 4 by the gate, theirs 4 west. Theirs is the later one and is kept: 4 west.")
    stage.press("Take it in")
    stage.sees("1 record taken in.")
    check(labels(stage) == ["4 west", "7"], f"on the first phone: {labels(stage)}")
    stage.press("Done")
    from_a = written(stage)
    stage.quit()

    use(stage, "b")
    stage.start("--position", "none", from_a)
    stage.press("Take it in")
    stage.sees("1 record taken in.")
    check(labels(stage) == ["4 west", "7"], f"on the second phone: {labels(stage)}")
    stage.quit()
    histories = []
    for phone in ("a", "b"):
        use(stage, phone)
        check(stage.rows("PRAGMA integrity_check")[0][0] == "ok", f"the database of phone {phone}")
        histories.append([tuple(row) for row in stage.rows(
            "SELECT record_id, field, stamp, kind, value FROM revision ORDER BY record_id, field, stamp")])
    check(histories[0] == histories[1], "the two phones do not hold the same history")
    names = [value for _, field, _, kind, value in histories[0] if (kind, field) == ("colony", "label")]
    check(sorted(names) == ["4", "4 by the gate", "4 west", "7"], f"the names that were given: {names}")

    use(stage, "a")  # nothing new, and a file that is none
    stage.start("--position", "none", from_a)
    stage.sees("Nothing in it is new: all of it is here already.")
    stage.press("Done")
    stage.quit()
    broken = os.path.join(stage.folder, "holiday.halfcup")
    with open(broken, "w", encoding="utf-8") as file:
        file.write("wish you were here\n")
    stage.start("--position", "none", broken)
    stage.sees("holiday.halfcup is not a file that Halfcup wrote for another phone. Nothing was changed.")


run(two_phones)
