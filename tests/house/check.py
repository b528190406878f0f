#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""Checks of the house itself, not of the program: check.py CHECK [ROOT].

Prints one line a complaint, as file:line: sentence. Exit code 0 without a complaint, 1 with some, 2 for a wrong call,
77 where it cannot be made.
A check that found nothing to look at has a complaint too: silence must not be taken for order.
"""

import pathlib
import sys

import forbidden
import layers
import outline
import strangers
import tools
import tree

CHECKS = {
    "layers": layers.layers,
    "forbidden": forbidden.forbidden,
    "spdx": outline.spdx,
    "sizes": outline.sizes,
    "toplevel": outline.toplevel,
    "machine_paths": outline.machine_paths,
    "format": tools.format_cpp,
    "spelling": tools.spelling,
    "scripts": tools.scripts,
    "plain_text": strangers.plain_text,
    "sql_text": strangers.sql_text,
}


def main(arguments):
    if not 1 <= len(arguments) <= 2 or arguments[0] not in CHECKS:
        print(f"usage: check.py {'|'.join(CHECKS)} [ROOT]", file=sys.stderr)
        return 2
    here = tree.Tree(arguments[1] if len(arguments) == 2 else pathlib.Path(__file__).parents[2])
    CHECKS[arguments[0]](here)
    if here.skipped:
        print(f"{arguments[0]}: skipped. {here.skipped}")
        return 77
    if here.looked_at == 0:
        here.complain(str(here.root), 0, "there was nothing to look at.")
    for complaint in here.complaints:
        print(complaint)
    print(f"{arguments[0]}: {here.looked_at} files, {len(here.complaints)} complaints")
    return 1 if here.complaints else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
