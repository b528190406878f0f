#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""The pages of the manual.
usage: platform_man.py SOURCES HALFCUP HALFCUP-DESK

Read by two programs that are not ours, man (groff) and mandoc, which must have nothing to say; and compared with what the
programs themselves say: each option and each verb is there, and none that there is not.
"""

import os
import re
import shutil
import subprocess
import sys


def out(*command):
    got = subprocess.run(command, capture_output=True, text=True, check=False, env=dict(os.environ, LC_ALL="C.UTF-8", MANWIDTH="120"))
    return got.returncode, got.stdout, got.stderr.strip()


def readable(page):
    wrong, missing = [], []
    for command in (("man", "--warnings", "-E", "UTF-8", "-l", "-Tutf8", "-Z", page), ("mandoc", "-T", "lint", "-W", "warning", page)):
        if not shutil.which(command[0]):
            missing.append(f"{command[0]} is not there (platform/linux/install-packages check brings it)")
            continue
        code, said, errors = out(*command)
        if command[0] == "man":
            said = ""  # the page itself
        if code or said or errors:
            wrong.append(f"{os.path.basename(page)}: {command[0]}: {said}{errors}")
    return wrong, missing


def text_of(page):
    with open(page, encoding="utf-8") as file:
        return file.read()


def options(folder, program):
    code, said, errors = out(program, "--help")
    if code:
        return [f"{program} --help: {errors}"]
    told = set(re.findall(r"^  (?:-\w, )?--([\w-]+)", said, re.M))
    written = set(re.findall(r"^\.It Fl (?:\w , )?-([\w-]+)", text_of(os.path.join(folder, "halfcup.1")), re.M))
    wrong = [] if len(told) > 5 else [f"--help has no options: {said}"]
    return wrong + [f"halfcup.1 and --help differ in {o}" for o in sorted(told ^ written)]


def verbs(folder, desk):
    code, said, errors = out(desk, "--help")
    if code:
        return [f"{desk} --help: {errors}"]
    told = dict(re.findall(r"^  (\w+) +(.+)$", said, re.M))
    page = text_of(os.path.join(folder, "halfcup-desk.1"))
    written = re.findall(r"^\.It Cm (\w+)", page, re.M)
    wrong = [] if len(told) > 5 else [f"--help has no verbs: {said}"]
    wrong += [f"halfcup-desk.1 and --help differ in {v}" for v in sorted(set(told) ^ set(written))]
    if not wrong and written != list(told):
        wrong.append(f"halfcup-desk.1 has the verbs in another order than --help: {written}")
    return wrong


def main():
    sources, program, desk = sys.argv[1:]
    folder = os.path.join(sources, "platform", "linux", "man")
    wrong, missing = options(folder, program) + verbs(folder, desk), []
    for name in ("halfcup.1", "halfcup-desk.1"):
        bad, absent = readable(os.path.join(folder, name))
        wrong += bad
        missing += absent
    print("\n".join(wrong) or ("Skipped: " + "; ".join(sorted(set(missing))) if missing else "The pages say what the programs do."))
    return 1 if wrong else 77 if missing else 0


if __name__ == "__main__":
    sys.exit(main())
