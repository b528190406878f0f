#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""Holds every file of assets/handbook against schema.json there, and shows that the schema refuses what it should.

handbook_schema.py ROOT. Exit code 0 when all holds, 1 otherwise, 77 (skipped) without the Python module jsonschema.
"""

import copy
import json
import pathlib
import sys

try:
    import jsonschema
except ImportError:
    print("skipped: the Python module jsonschema (Debian: python3-jsonschema) is not installed.")
    sys.exit(77)

folder = pathlib.Path(sys.argv[1]) / "assets" / "handbook"
schema = json.loads((folder / "schema.json").read_text(encoding="utf-8"))
jsonschema.Draft202012Validator.check_schema(schema)
validator = jsonschema.Draft202012Validator(schema)
complaints, ids, values = [], {}, 0

files = sorted(f for f in folder.glob("*.json") if f.name != "schema.json")
for file in files:
    content = json.loads(file.read_text(encoding="utf-8"))
    for error in validator.iter_errors(content):
        complaints.append(f"{file.name}: {'/'.join(map(str, error.absolute_path))}: {error.message}")
    if content.get("topic") != file.stem:
        complaints.append(f"{file.name}: its topic is not the file's name.")
    for entry in content.get("entries", []):
        values += 1
        if ids.setdefault(entry.get("id"), file.name) != file.name or entry.get("id") is None:
            complaints.append(f"{file.name}: the id {entry.get('id')} is in {ids[entry.get('id')]} too.")

# The schema itself: each of these is one step away from a good file and has to be refused.
good = json.loads((folder / "lines.json").read_text(encoding="utf-8"))


def spoilt(change):
    bad = copy.deepcopy(good)
    change(bad["entries"][2])
    return bad


HOLES = {
    "no source": lambda e: e.pop("source"),
    "blank source": lambda e: e.update(source="  "),
    "no unit": lambda e: e.pop("unit"),
    "no year": lambda e: e.pop("year"),
    "no mark": lambda e: e.pop("mark"),
    "unknown mark": lambda e: e.update(mark="surely"),
    "no figure": lambda e: e.pop("value"),
    "figure as text": lambda e: e.update(value="3"),
    "words with a figure": lambda e: e.update(unit="words"),
    "subject alone": lambda e: e.pop("property"),
    "unknown field": lambda e: e.update(remark="x"),
}
for name, change in HOLES.items():
    if validator.is_valid(spoilt(change)):
        complaints.append(f"schema.json takes an entry with: {name}.")

if values < 200 or len(files) < 12:
    complaints.append(f"only {values} values in {len(files)} files: something is not being read.")
for complaint in complaints:
    print(complaint)
print(f"handbook: {len(files)} files, {values} values, {len(complaints)} complaints")
sys.exit(1 if complaints else 0)
