#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""Writes the demo season to standard output: demo-data/make.py > demo-data/season.json

Everything here is invented, and the same on every run: ids and the small scatter of positions come from hashes of
names. The file holds what a keeper did and counted; what a count means is computed by the program that reads it.
"""

import hashlib
import json
import sys
from datetime import datetime

HALF_CUP_ML = 118.294
YEAR = 2026

# name, latitude, longitude (round figures on open land, picked without looking at what stands there), own line
YARDS = (
    ("Alder Bend", 53.071, 19.642, None),
    ("Long Furrow", 53.092, 19.601, 1.7),
)

# yard, label, note
COLONIES = (
    ("Alder Bend", "1", "swarm taken last July"),
    ("Alder Bend", "2", ""),
    ("Alder Bend", "4", "strongest of the yard"),
    ("Alder Bend", "7", ""),
    ("Alder Bend", "10", "small in spring"),
    ("Long Furrow", "3", ""),
    ("Long Furrow", "5", ""),
    ("Long Furrow", "6", "under the hedge, no sky to speak of"),
    ("Long Furrow", "Nuc by the gate", "made up in April, not washed: too few bees"),
)

# colony, local start, mites, and what was out of the ordinary
WASHES = (
    # Alder Bend, March to the day of the story
    ("4", "03-15 11:05", 4, {}),
    ("10", "03-15 11:40", 2, {"position_state": "no_fix"}),
    ("2", "03-21 13:10", 1, {}),
    ("7", "03-21 13:45", 0, {"note": "none in the jar, washed again to be sure", "mites_second_rinse": 0}),
    ("4", "04-12 10:20", 12, {"mites_second_rinse": 1, "slips": 1, "note": "four bees with crippled wings"}),
    ("10", "04-12 10:55", 3, {}),
    ("7", "04-12 11:20", None, {"step": "safety", "queen": "not_seen", "note": "rain before the queen was found"}),
    ("2", "04-20 15:00", 6, {"slips": 2}),
    ("7", "04-20 15:35", 2, {}),
    ("10", "05-14 17:30", 3, {"bees": 150, "volume_ml": 59.147, "note": "few bees on the brood, half a scoop"}),
    # Long Furrow, March to the day of the story
    ("3", "03-28 10:00", 1, {}),
    ("5", "03-28 10:30", 0, {"mites_second_rinse": 0}),
    ("6", "03-28 11:00", 2, {"position_state": "denied"}),
    ("3", "04-25 09:50", 3, {"counted_by": "typed"}),
    ("5", "04-25 10:25", 5, {"slips": 1}),
    ("6", "04-25 11:00", 2, {"position_state": "no_fix", "shaken_s": 45}),
    # Alder Bend, the rest of the year
    ("4", "05-18 10:05", 9, {"note": "formic acid from 20 May"}),
    ("2", "05-20 16:10", 7, {}),
    ("7", "05-20 16:45", 3, {}),
    ("10", "05-21 17:05", 2, {}),
    ("1", "06-03 18:00", 2, {"note": "first wash of this colony"}),
    ("4", "06-08 10:00", 2, {"note": "twelve days after the pads came out"}),
    ("2", "06-17 15:30", 9, {"note": "to be treated with colony 10 after the lime is off"}),
    ("7", "06-17 16:05", 4, {}),
    ("10", "06-17 16:40", 5, {}),
    ("1", "07-01 17:50", 4, {"slips": 1}),
    ("4", "07-06 09:40", 3, {}),
    ("2", "07-15 15:20", 3, {}),
    ("7", "07-15 15:55", 6, {"bees": 320, "bees_source": "counted"}),
    ("10", "07-15 16:30", 7, {"counted_by": "typed"}),
    ("1", "07-29 18:10", 6, {}),
    ("4", "08-03 10:15", 4, {}),
    ("2", "08-12 15:10", 5, {}),
    ("7", "08-12 15:45", 8, {"mites_second_rinse": 1}),
    ("10", "08-12 16:20", 11, {"mites_second_rinse": 2, "slips": 1, "note": "over the line before winter bees"}),
    ("1", "08-26 17:40", 9, {}),
    ("4", "08-31 09:55", 5, {}),
    ("2", "09-09 14:30", 3, {}),
    ("7", "09-09 15:05", 4, {}),
    ("10", "09-09 15:40", 5, {"position_state": "no_fix"}),
    ("1", "09-23 16:00", 4, {}),
    ("4", "09-28 11:00", 2, {}),
    ("2", "10-07 13:00", 2, {}),
    ("7", "10-07 13:35", 2, {}),
    ("10", "10-07 14:10", 3, {}),
    ("1", "10-21 13:20", 2, {}),
    ("4", "10-26 12:30", 1, {"note": "last wash of the year"}),
    # Long Furrow, the rest of the year
    ("3", "05-25 09:45", 4, {}),
    ("5", "05-25 10:20", 8, {}),
    ("6", "05-25 10:55", 3, {"position_state": "no_fix"}),
    ("3", "06-22 09:30", 6, {}),
    ("5", "06-22 10:05", 3, {"note": "nineteen days after the pads came out"}),
    ("6", "06-22 10:40", 5, {}),
    ("3", "07-20 09:20", 8, {}),
    ("5", "07-20 09:55", 4, {}),
    ("6", "07-20 10:30", None, {"step": "count", "shaken_s": 60, "note": "the lid slipped, bees and mites on the grass"}),
    ("6", "07-20 11:15", 7, {}),
    ("3", "08-17 10:00", 12, {"mites_second_rinse": 1}),
    ("5", "08-17 10:35", 6, {}),
    ("6", "08-17 11:10", 10, {"position_state": "no_fix"}),
    ("3", "09-14 11:00", 4, {}),
    ("5", "09-14 11:35", 4, {}),
    ("6", "09-14 12:10", 3, {}),
    ("3", "10-12 12:30", 2, {}),
    ("5", "10-12 13:05", 1, {}),
    ("6", "10-12 13:40", 2, {}),
)

# colonies (label, or a yard for all of its hives), what happened, day, and what belongs to it
EVENTS = (
    ("Alder Bend", "floor", "03-01", {"floor": "screened"}),
    ("Long Furrow", "floor", "03-01", {"floor": "solid"}),
    ("4", "strength", "04-12", {"frames": 11}),
    ("10", "strength", "05-14", {"frames": 4}),
    ("4", "brood", "04-12", {"brood": "capped"}),
    ("2", "brood", "04-20", {"brood": "capped"}),
    ("7", "brood", "04-20", {"brood": "capped"}),
    ("Long Furrow", "brood", "04-25", {"brood": "capped"}),
    ("Nuc by the gate", "split", "04-28", {"words": "made up from colonies 3 and 5"}),
    ("4", "supers_on", "05-03", {}),
    ("7", "supers_on", "05-03", {}),
    ("5", "strength", "05-25", {"frames": 9}),
    ("2", "requeened", "06-05", {"words": "daughter of colony 7"}),
    ("3", "supers_on", "05-25", {}),
    ("4", "supers_off", "07-25", {}),
    ("7", "supers_off", "07-25", {}),
    ("3", "supers_off", "08-10", {}),
    ("7", "swarmed", "06-01", {"words": "hung in the alder, taken by a neighbour"}),
    ("Alder Bend", "brood", "12-18", {"brood": "none"}),
    ("Long Furrow", "brood", "12-18", {"brood": "none"}),
)

SHOP = "The farm shop, 2 Mill Lane"
PADS = {"product": "formic acid pads, as on the label", "batch": "FA-0417", "expiry": "2027-11-30", "supplier": SHOP,
        "proof": "receipt of 9 April 2026", "withdrawal_days": 0, "done_by": "the keeper"}
STRIPS = {"product": "amitraz strips, as on the label", "batch": "AM-2210", "expiry": "2028-02-29", "supplier": SHOP,
          "proof": "receipt of 3 August 2026", "withdrawal_days": 0, "prescriber": "the practice in town",
          "done_by": "the keeper"}
TRAYS = {"product": "thymol trays, as on the label", "batch": "TH-88", "expiry": "2027-08-31", "supplier": SHOP,
         "proof": "receipt of 3 August 2026", "withdrawal_days": 0, "done_by": "the keeper"}
DRIP = {"product": "oxalic acid solution, as on the label", "batch": "OX-12", "expiry": "2027-10-31", "supplier": SHOP,
        "proof": "receipt of 1 December", "withdrawal_days": 0, "done_by": "the keeper"}

# colonies, substance, first day, last day, day taken out, quantity, product
TREATMENTS = (
    ("Alder Bend", "oxalic-acid", "2025-12-20", "2025-12-20", None, "5 doses of the label", DRIP),
    ("Long Furrow", "oxalic-acid", "2025-12-20", "2025-12-20", None, "3 doses of the label", DRIP),
    ("4", "formic-acid", "2026-05-20", "2026-05-26", "2026-05-27", "2 pads", PADS),
    ("5", "formic-acid", "2026-05-27", "2026-06-02", "2026-06-03", "2 pads", PADS),
    ("2", "formic-acid", "2026-06-24", "2026-06-30", "2026-07-01", "2 pads", PADS),
    ("Alder Bend", "amitraz", "2026-08-14", "2026-09-24", "2026-09-25", "10 strips", STRIPS),
    ("Long Furrow", "thymol", "2026-08-18", "2026-09-14", "2026-09-14", "6 trays", TRAYS),
)


def chance(name, count):
    """So many whole numbers from a name, 0 to 65535 each."""
    digest = hashlib.sha256(name.encode()).digest()
    return [digest[2 * i] * 256 + digest[2 * i + 1] for i in range(count)]


def record_id(name, moment):
    """A UUID of version 7 by its shape; what is chance in a true one comes from the name."""
    milliseconds = int(datetime.fromisoformat(moment).timestamp() * 1000)
    a, b, c, d, e = chance("id " + name, 5)
    return (f"{milliseconds >> 16:08x}-{milliseconds & 0xFFFF:04x}-{0x7000 | a & 0xFFF:04x}-"
            f"{0x8000 | b & 0x3FFF:04x}-{c:04x}{d:04x}{e:04x}")


def local(text):
    """'04-12 10:20' as RFC 3339 in Central European time; summer time from 29 March to 24 October 2026."""
    summer = "03-29" <= text[:5] <= "10-24"
    return f"{YEAR}-{text[:5]}T{text[6:]}:00+0{2 if summer else 1}:00"


def scoop_of(odd):
    bees = odd.pop("bees", None)
    scoop = {"volume_ml": odd.pop("volume_ml", HALF_CUP_ML), "packing": "loose",
             "bees_source": odd.pop("bees_source", "typed" if bees else "book")}
    if bees:
        scoop |= {"bees": bees, "bees_cv": 0.1 if scoop["bees_source"] == "typed" else 0.02}
    return scoop


def sample(yard, colony_id, label, start, mites, odd):
    odd = dict(odd)
    name = f"wash {label} {start}"
    look, scatter_n, scatter_e, accuracy, fixes, age, pace = chance(name, 7)
    row = {"id": record_id(name, local(start)), "colony_id": colony_id, "method": "alcohol_wash",
           "state": "abandoned" if mites is None else "finished", "started_at": local(start),
           "queen": odd.pop("queen", "seen_and_safe" if look % 3 else "not_seen")}
    scooped = mites is not None or odd.get("step") == "count"
    after = 90 + pace % 120
    if scooped:
        row |= {"scooped_after_s": after, "scoop": scoop_of(odd)}
    row["position_state"] = odd.pop("position_state", "stamped" if scooped else "not_tried")
    if row["position_state"] == "stamped":
        row["position"] = {  # within some 6 m of the yard's place
            "latitude_deg": round(yard[1] + (scatter_n / 65535 - 0.5) * 1e-4, 6),
            "longitude_deg": round(yard[2] + (scatter_e / 65535 - 0.5) * 1.7e-4, 6),
            "accuracy_m": round(3 + accuracy % 60 / 10, 1), "fix_count": 4 + fixes % 9, "age_ms": 200 + age % 900}
    if scooped:
        row["shaken_s"] = odd.pop("shaken_s", 60)
        after += row["shaken_s"] + 35
    if mites is not None:
        row |= {"settled_after_s": after, "mites": mites}
        after += 30 + 12 + 3 * mites
        if "mites_second_rinse" in odd:
            after += 90
            row["mites_second_rinse"] = odd.pop("mites_second_rinse")
    row["ended_after_s"] = after + 20
    return row | odd


def those(whom, homes):
    """The labels meant by a label or by a yard's name; the nuc is treated with nobody."""
    if whom in homes:
        return [whom]
    return [label for label, (yard, _) in homes.items() if yard[0] == whom and not label.startswith("Nuc")]


def events(homes):
    rows = []
    for whom, what, day, more in EVENTS:
        for label in those(whom, homes):
            rows.append({"id": record_id(f"event {label} {what} {day}", f"{YEAR}-{day}T18:00:00+00:00"),
                         "colony_id": homes[label][1], "event": what, "day": f"{YEAR}-{day}"} | more)
    return rows


def treatments(homes):
    rows = []
    for whom, substance, first, last, out, quantity, product in TREATMENTS:
        row = {"id": record_id(f"treatment {whom} {substance} {first}", f"{first}T18:00:00+00:00"),
               "colony_ids": [homes[label][1] for label in those(whom, homes)], "substance": substance,
               "first_day": first, "last_day": last, "quantity": quantity}
        rows.append(row | ({"removal_due": out, "removed_on": out} if out else {}) | product)
    return rows


def season():
    yards, colonies, samples, homes = [], [], [], {}
    for yard in YARDS:
        row = {"id": record_id("yard " + yard[0], f"{YEAR}-03-01T09:00:00+01:00"), "name": yard[0],
               "latitude_deg": yard[1], "longitude_deg": yard[2], "position_accuracy_m": 5, "reach_m": 150,
               "registration_number": f"DEMO-{len(yards) + 1}", "treat_line_per_100": 3,
               "treat_line_source": "trade-rule"}
        yards.append(row | ({"own_line_per_100": yard[3]} if yard[3] else {}))
    for yard_name, label, note in COLONIES:
        place = next(i for i, yard in enumerate(YARDS) if yard[0] == yard_name)
        identity = record_id("colony " + label, f"{YEAR}-03-01T09:05:00+01:00")
        homes[label] = YARDS[place], identity
        row = {"id": identity, "yard_id": yards[place]["id"], "label": label}
        colonies.append(row | ({"note": note} if note else {}))
    for label, start, mites, odd in WASHES:
        samples.append(sample(*homes[label], label, start, mites, odd))
    samples.sort(key=lambda row: datetime.fromisoformat(row["started_at"]))
    return yards, colonies, samples, events(homes), treatments(homes)


def main():
    head = {"format": "halfcup-demo", "version": 1,
            "invented": "Yards, positions, colonies, washes, counts, treatments and products in this file are invented.",
            "today": f"{YEAR}-05-18T09:40:00+02:00"}
    text = "{\n" + "".join(f"  {json.dumps(name)}: {json.dumps(value)},\n" for name, value in head.items())
    parts = []
    for name, rows in zip(("yards", "colonies", "samples", "events", "treatments"), season()):
        parts.append(f"  {json.dumps(name)}: [\n" + ",\n".join("    " + json.dumps(row) for row in rows) + "\n  ]")
    sys.stdout.write(text + ",\n".join(parts) + "\n}\n")


if __name__ == "__main__":
    main()
