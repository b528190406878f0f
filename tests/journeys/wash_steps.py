# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""The parts that several journeys share, each with the words a keeper reads."""

from halfcup_journey import check


def demo_records(stage):
    """The demo's yards in the journey's database, made by the program itself."""
    stage.start("--demo", "--position", "none")
    stage.sees("Alder Bend")
    stage.quit()


def first_start(stage):
    """Nothing is kept yet: what the app is not comes before all else, and once."""
    stage.sees("No vet.")
    stage.press("Understood, go on")


def to_the_shake(stage, first="Wash colony", begins=True, about_the_position=None):
    """Four touches, from the first page to the running timer; on the way what the page says of the position."""
    stage.press(first, begins=begins)
    stage.sees("Where is the queen?")
    stage.press("Queen seen and safe")
    stage.sees("Scoop the bees")
    stage.press("Scooped")
    stage.sees("Pour and close")
    if about_the_position:
        stage.sees(about_the_position)
    stage.press("Lid on: start the shake")
    stage.sees("Turn the jar over and over")


def to_the_count(stage):
    stage.press("Stop here")
    stage.sees("Let it settle")
    stage.press("Count the mites")
    stage.button("Count one mite")


def count(stage, first, last):
    """One touch for each mite; the figure is read after each, as somebody who looks would."""
    for mites in range(first, last + 1):
        stage.press("Count one mite")
        stage.sees("1 mite" if mites == 1 else f"{mites} mites")


def to_the_answer(stage):
    stage.press("Done")
    stage.press("Show the answer")


def the_wash(stage, started=None):
    """The newest sample that this run made, by its start."""
    rows = stage.rows("SELECT * FROM sample ORDER BY started_at_ms DESC LIMIT 1")
    check(rows, "there is no sample on the disk")
    return rows[0]


def acts(stage, sample, rinse=1):
    return [row["change"] for row in stage.rows(
        "SELECT change FROM count_event WHERE sample_id = ? AND rinse = ? ORDER BY number", sample, rinse)]
