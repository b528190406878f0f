#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""Constants in C++ that belong in the handbook.

handbook_constants.py ROOT. Three checks, one line a complaint, exit code 0 or 1:
1. Every named constant of cpp/mites is in handbook_constants.json beside this file: with the id of its handbook
   value, or among the mathematics with a reason. (A file's own constants count too.)
2. A constant with an id has the handbook's figure, and nothing in the list is left over.
3. No figure that is telling of the handbook (three digits and more, or hundredths and less) is written into C++
   elsewhere; where one has to be, the list's "literals" names file, figure and handbook id. A figure that is
   another thing's and only happens to be the same stands in "coincidences" with what it is.
"""

import json
import math
import pathlib
import re
import sys

root = pathlib.Path(sys.argv[1])
allowed = json.loads(pathlib.Path(__file__).with_suffix(".json").read_text(encoding="utf-8"))
complaints = []

entries = {}
for file in sorted((root / "assets/handbook").glob("*.json")):
    if file.name != "schema.json":
        for entry in json.loads(file.read_text(encoding="utf-8"))["entries"]:
            entries[entry["id"]] = dict(entry, topic=file.stem)


def without_comments(text):
    """The same with comments and texts blanked, lines kept."""
    blank = lambda found: re.sub(r"[^\n]", " ", found[0])
    return re.sub(r"//[^\n]*|/\*.*?\*/|\"(?:\\.|[^\"\\\n])*\"", blank, text, flags=re.S)


CONSTANT = re.compile(r"\b(?:inline\s+|static\s+)*constexpr\s+[\w:<>, ]+?\s+(k[A-Z]\w*)\s*(?:=\s*|\{)([^;]*);", re.S)
NUMBER = re.compile(r"(?<![\w.])(?:\d+\.?\d*(?:[eE][-+]?\d+)?|\.\d+(?:[eE][-+]?\d+)?)(?![\w.])")

found, stripped = {}, {}
for path in sorted(root.glob("cpp/*/**/*")) + sorted(root.glob("cpp/*/*")):
    if path.suffix in (".h", ".cpp"):
        stripped[str(path.relative_to(root))] = without_comments(path.read_text(encoding="utf-8"))
for name, text in stripped.items():
    if name.startswith("cpp/mites/"):
        for match in CONSTANT.finditer(text):
            found.setdefault(match[1], []).append((name, match[2]))


def figures(expression):
    """The numbers of a constant's expression: one for a scalar, several for a table."""
    return [float(n) for n in NUMBER.findall(expression)]


for constant, places in found.items():
    name, expression = places[0]
    if constant in allowed["constants"]:
        wanted_id = allowed["constants"][constant]
        if wanted_id.endswith("*"):
            wanted = [entries[i].get("value") for i in entries if i.startswith(wanted_id[:-1])]
        else:
            entry = entries.get(wanted_id, {})
            wanted = [entry.get("value", entry.get("low"))]
        if not wanted or None in wanted:
            complaints.append(f"{name}: {constant}: the handbook has no figure '{wanted_id}'.")
            continue
        if constant in allowed["percent"]:
            wanted = [w / 100 for w in wanted]
        got = figures(expression)
        if len(got) != len(wanted) or not all(math.isclose(a, b, rel_tol=1e-12) for a, b in zip(got, wanted)):
            complaints.append(f"{name}: {constant} is {got}, the handbook's '{wanted_id}' is {wanted}.")
    elif constant not in allowed["mathematics"]:
        complaints.append(f"{name}: {constant} is named neither with its handbook id nor as mathematics in "
                          "tests/unit/handbook_constants.json.")
for kind in ("constants", "mathematics"):
    for constant in allowed[kind]:
        if constant not in found:
            complaints.append(f"handbook_constants.json: {constant} is nowhere in cpp/mites.")

# Figures that nobody writes by chance: they point at a handbook value copied into code.
TOPICS = ("lines", "other-lines", "scoop", "sampling", "recovery", "growth", "substances", "efficacy", "turn-date")


def telling(value):
    digits = f"{abs(value):.10g}".replace(".", "").strip("0")
    return len(digits) >= 3 or (0 < abs(value) < 0.1 and len(digits) >= 2)


tell = {}
for ident, entry in entries.items():
    if entry["topic"] in TOPICS:
        for field in ("value", "low", "high"):
            if field in entry and telling(entry[field]):
                tell.setdefault(entry[field], ident)
used = set()
for name, text in stripped.items():
    if re.fullmatch(r"cpp/mites/(\w+_)?constants\.h", name):
        continue
    for number, line in enumerate(text.split("\n"), 1):
        for literal in NUMBER.findall(line):
            if float(literal) in tell:
                key = f"{name} {literal}"
                if key in allowed["coincidences"]:
                    used.add(key)
                elif key in allowed["literals"]:
                    used.add(key)
                    if allowed["literals"][key] not in entries:
                        complaints.append(f"{name}:{number}: '{allowed['literals'][key]}' is no id of the handbook.")
                else:
                    complaints.append(f"{name}:{number}: {literal} is the handbook's '{tell[float(literal)]}'; "
                                      "read it from there, or name it in tests/unit/handbook_constants.json.")
for key in [*allowed["literals"], *allowed["coincidences"]]:
    if key not in used:
        complaints.append(f"handbook_constants.json: {key} is not there any more.")

if len(found) < 40 or len(tell) < 20 or len(stripped) < 40:
    complaints.append(f"only {len(found)} constants, {len(tell)} telling figures, {len(stripped)} files: something is "
                      "not being read.")
for complaint in complaints:
    print(complaint)
print(f"handbook constants: {len(found)} constants, {len(tell)} telling figures, {len(stripped)} files, "
      f"{len(complaints)} complaints")
sys.exit(1 if complaints else 0)
