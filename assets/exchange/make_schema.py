#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""Prints line.schema.json: what one line of an exchange file may look like (JSON Schema, draft 2020-12).

make_schema.py > line.schema.json, after a field was added. The kinds and fields come from cpp/records/fields.cpp; a
test compares what is printed with the file, and another the file with what the program says of its fields.
"""

import json
import pathlib
import re

HERE = pathlib.Path(__file__).resolve().parent
FIELDS = (HERE.parent.parent / "cpp" / "records" / "fields.cpp").read_text(encoding="utf-8")

DEVICE = "[a-z0-9-]{1,64}"
WHOLE = 1_000_000_000
REAL = 1e12
END_OF_TIME = 2**48 - 1


def kinds():
    """{kind: {field: type}} out of the tables of the program."""
    tables = {}
    for name, body in re.findall(r"constexpr std::array<Field, \d+> (\w+)\{(.*?)\};", FIELDS, re.S):
        tables[name] = dict(re.findall(r'\{"(\w+)", (\w+)\}', body))
    named = re.findall(r'\{"(\w+)", (\w+), names<', FIELDS)
    return {kind: tables[table] for kind, table in named}


def number(kind, low, high):
    return {"type": [kind, "null"], "minimum": low, "maximum": high}


def field(name, kind):
    if kind == "Whole":
        return number("integer", 0, END_OF_TIME) if name.endswith("_ms") else number("integer", -WHOLE, WHOLE)
    if kind == "Real":
        most = {"latitude_deg": 90, "longitude_deg": 180}.get(name, REAL)
        return number("number", -most, most)
    if kind == "Flag":
        return {"enum": [0, 1, None]}
    if kind == "Id":
        return {"oneOf": [{"$ref": "#/$defs/id"}, {"type": "null"}]}
    return {"type": ["string", "null"], "maxLength": 100_000}


def for_kind(kind, fields):
    shape = {name: field(name, of) for name, of in sorted(fields.items())}
    return {
        "if": {"required": ["kind"], "properties": {"kind": {"const": kind}}},
        "then": {"properties": {"revisions": {"items": {"properties": {"fields": {"properties": shape}}}}}},
    }


def schema():
    end = {"lines": {"type": "integer", "minimum": 1}, "end": {"type": "string", "pattern": "^[0-9a-f]{64}$"}}
    version = {"type": "integer", "minimum": 1, "maximum": 1_000_000}
    count = {
        "type": "object",
        "required": ["at", "rinse", "change", "ms"],
        "properties": {
            "at": {"$ref": "#/$defs/stamp"},
            "rinse": {"enum": [1, 2]},
            "change": {"enum": ["tap", "typed", "undo"]},
            "ms": {"type": "integer", "minimum": 0, "maximum": END_OF_TIME},
            "typed": {"type": "integer", "minimum": 0, "maximum": 10_000},
        },
        "if": {"properties": {"change": {"const": "typed"}}},
        "then": {"required": ["typed"]},
    }
    revision = {
        "type": "object",
        "required": ["at", "fields"],
        "properties": {
            "at": {"$ref": "#/$defs/stamp"},
            "fields": {
                "type": "object",
                "propertyNames": {"pattern": "^[a-z0-9_]{1,64}$"},
                "additionalProperties": {"$ref": "#/$defs/value"},
            },
        },
    }
    return {
        "$comment": "SPDX-FileCopyrightText: 2026 The Halfcup developers. SPDX-License-Identifier: Apache-2.0. "
        "Printed by make_schema.py beside it. The page cpp/exchange/exchange-file.md says what it means.",
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "title": "One line of a Halfcup exchange file",
        "type": "object",
        "required": ["sum"],
        "properties": {"sum": {"type": "string", "pattern": "^[0-9a-f]{8}$"}},
        "oneOf": [{"$ref": "#/$defs/header"}, {"$ref": "#/$defs/part"}, {"$ref": "#/$defs/end"}],
        "$defs": {
            "device": {"type": "string", "pattern": f"^{DEVICE}$"},
            "stamp": {"type": "string", "pattern": f"^0000[0-9a-f]{{12}}-[0-9a-f]{{8}}-{DEVICE}$"},
            "id": {
                "type": "string",
                "pattern": "^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$",
            },
            "value": {
                "type": ["string", "number", "null"],
                "$comment": "Whole numbers have 64 bits with their sign; JSON Schema cannot tell 3 from 3.0, Halfcup does.",
            },
            "header": {
                "required": ["halfcup", "format", "needs", "device"],
                "properties": {
                    "halfcup": {"const": "exchange"},
                    "format": version,
                    "needs": version,
                    "device": {"$ref": "#/$defs/device"},
                    "written": {"type": "string", "format": "date-time"},
                    "counts": {
                        "type": "object",
                        "propertyNames": {"pattern": "^[a-z0-9_]{1,40}$"},
                        "additionalProperties": {"type": "integer", "minimum": 0},
                    },
                    "seen": {
                        "type": "object",
                        "propertyNames": {"pattern": f"^{DEVICE}$"},
                        "additionalProperties": {"$ref": "#/$defs/stamp"},
                        "maxProperties": 500,
                    },
                },
            },
            "part": {
                "required": ["kind", "id"],
                "not": {"anyOf": [{"required": ["halfcup"]}, {"required": ["end"]}]},
                "properties": {
                    "kind": {"type": "string", "pattern": "^[a-z0-9_]{1,40}$"},
                    "id": {"$ref": "#/$defs/id"},
                    "revisions": {"type": "array", "items": revision},
                    "counts": {"type": "array", "items": count},
                },
                "if": {"required": ["counts"]},
                "then": {"properties": {"kind": {"const": "sample"}}},
                "allOf": [for_kind(kind, fields) for kind, fields in kinds().items()],
            },
            "end": {"required": ["end", "lines"], "not": {"required": ["halfcup"]}, "properties": end},
        },
    }


print(json.dumps(schema(), indent=1))
