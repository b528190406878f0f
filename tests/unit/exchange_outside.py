#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""Reads an exchange file with nothing of Halfcup: Python's json, zlib.crc32 and hashlib.

exchange_outside.py FILE           checks every line and prints every value: its type and its bits.
exchange_outside.py FILE SCHEMA    holds every line against the schema too (python3-jsonschema), and shows that the
                                   schema refuses what it should.
Exit code 0 when all holds, 1 otherwise, 77 (skipped) without the module.
"""

import copy
import hashlib
import json
import pathlib
import sys
import zlib

TAIL = len(',"sum":"01234567"}')
complaints = []
lines = pathlib.Path(sys.argv[1]).read_bytes().split(b"\n")
if lines.pop() != b"":
    complaints.append("the last line has no end.")


def shown(value):
    if isinstance(value, str):
        return "t:" + value.encode("utf-8").hex()
    if isinstance(value, float):
        return "r:" + value.hex()
    return "n:" if value is None else f"i:{value}"


hashed, read = hashlib.sha256(), []
for number, line in enumerate(lines, 1):
    thing = json.loads(line)
    read.append(thing)
    if thing["sum"] != f"{zlib.crc32(line[:-TAIL]):08x}" or not line.endswith(f',"sum":"{thing["sum"]}"}}'.encode()):
        complaints.append(f"line {number}: wrong sum.")
    if "end" in thing and (thing["end"] != hashed.hexdigest() or thing["lines"] != number - 1):
        complaints.append("the last line does not match the rest.")
    hashed.update(line + b"\n")
    if len(sys.argv) == 2:
        for revision in thing.get("revisions", []):
            for name, value in revision["fields"].items():
                print(name, shown(value))
if "halfcup" not in read[0] or "end" not in read[-1]:
    complaints.append("no header, or no end.")

if len(sys.argv) > 2:
    try:
        import jsonschema
    except ImportError:
        print("skipped: the Python module jsonschema (Debian: python3-jsonschema) is not installed.")
        sys.exit(77)
    schema = json.loads(pathlib.Path(sys.argv[2]).read_text(encoding="utf-8"))
    jsonschema.Draft202012Validator.check_schema(schema)
    validator = jsonschema.Draft202012Validator(schema)
    for number, thing in enumerate(read, 1):
        for error in validator.iter_errors(thing):
            inner = "; ".join(each.message[:80] for each in error.context)
            complaints.append(f"line {number}: {error.message[:120]} ({inner})")

    # Each of these is one step away from a good line and has to be refused.
    def first(test):
        return copy.deepcopy(next(thing for thing in read if test(thing)))

    def kind(name):
        return lambda thing: thing.get("kind") == name

    def fields(thing):
        return thing["revisions"][0]["fields"]

    def counted(thing):
        return "kind" in thing and "counts" in thing

    header, end = (lambda thing: "halfcup" in thing), (lambda thing: "end" in thing)
    broken = {
        "no sum": (kind("yard"), lambda t: t.pop("sum")),
        "a sum in capitals": (kind("yard"), lambda t: t.update(sum="CBF43926")),
        "another program": (header, lambda t: t.update(halfcup="backup")),
        "no format": (header, lambda t: t.pop("format")),
        "format 0": (header, lambda t: t.update(format=0)),
        "no needs": (header, lambda t: t.pop("needs")),
        "a device that is a path": (header, lambda t: t.update(device="../../etc/passwd")),
        "a count of records below 0": (header, lambda t: t["counts"].update(yard=-1)),
        "seen without a stamp": (header, lambda t: t["seen"].update(other="yesterday")),
        "an end without lines": (end, lambda t: t.pop("lines")),
        "an end with half a hash": (end, lambda t: t.update(end=t["end"][:32])),
        "no kind": (kind("yard"), lambda t: t.pop("kind")),
        "a kind in capitals": (kind("yard"), lambda t: t.update(kind="Yard")),
        "no id": (kind("yard"), lambda t: t.pop("id")),
        "an id of version 4": (kind("yard"), lambda t: t.update(id="0b2a1c3d-1111-4222-8333-444455556666")),
        "a header that is a record too": (kind("yard"), lambda t: t.update(halfcup="exchange")),
        "revisions as an object": (kind("yard"), lambda t: t.update(revisions={})),
        "no stamp": (kind("yard"), lambda t: t["revisions"][0].pop("at")),
        "a stamp beyond all time": (
            kind("yard"),
            lambda t: t["revisions"][0].update(at="0001000000000000-00000000-abc"),
        ),
        "no fields": (kind("yard"), lambda t: t["revisions"][0].pop("fields")),
        "a field name with a blank": (kind("yard"), lambda t: fields(t).update({"a b": 1})),
        "a list as a value": (kind("yard"), lambda t: fields(t).update(newer=[1])),
        "true as a value": (kind("yard"), lambda t: fields(t).update(newer=True)),
        "a name that is a number": (kind("yard"), lambda t: fields(t).update(name=4)),
        "a flag of 2": (kind("yard"), lambda t: fields(t).update(removed=2)),
        "north of the pole": (kind("yard"), lambda t: fields(t).update(latitude_deg=90.5)),
        "half a mite": (kind("sample"), lambda t: fields(t).update(mites=3.5)),
        "a time before 1970": (kind("sample"), lambda t: fields(t).update(scooped_at_ms=-1)),
        "a colony that is no id": (kind("sample"), lambda t: fields(t).update(colony_id="4")),
        "a third rinse": (counted, lambda t: t["counts"][0].update(rinse=3)),
        "an unknown act": (counted, lambda t: t["counts"][0].update(change="guess")),
        "typed without a figure": (counted, lambda t: (t["counts"][0].update(change="typed"), t["counts"][0].pop("typed", 0))),
        "counts of a yard": (kind("yard"), lambda t: t.update(counts=[])),
    }
    for name, (test, change) in broken.items():
        bad = first(test)
        if not validator.is_valid(bad):
            complaints.append(f"before the change for '{name}' the line was refused already.")
        change(bad)
        if validator.is_valid(bad):
            complaints.append(f"the schema takes: {name}.")
    newer = first(kind("yard"))
    newer["later"] = {"a": [1]}
    fields(newer)["shade"] = "half"
    if not validator.is_valid(newer):
        complaints.append("the schema refuses what a newer version may add.")
    print(f"{len(read)} lines hold against the schema, {len(broken)} broken ones do not, {len(complaints)} complaints")

for complaint in complaints:
    print(complaint, file=sys.stderr)
sys.exit(1 if complaints else 0)
