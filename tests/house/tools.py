# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""Checks that other programs make: layout of C++, spelling, scripts."""

import os
import pathlib
import re
import shutil
import subprocess
import sys

from tree import CPP

LAYOUT_VERSION = "14"


def _run(tree, command, files):
    """Runs the command on the files from the tree's root and takes what it prints as complaints if it fails."""
    if not shutil.which(command[0]):
        tree.complain(command[0], 0, "is not installed; platform/linux/install-packages check brings it.")
        return
    # Far below the limit of a command line, so that the number of files does not matter.
    for start in range(0, len(files), 200):
        got = subprocess.run([*command, *files[start:start + 200]], cwd=tree.root, capture_output=True, text=True,
                             errors="replace", check=False)
        if got.returncode != 0:
            said = (got.stdout + got.stderr).strip()
            tree.complaints += said.split("\n") if said else [f"{command[0]} failed and said nothing."]


def format_cpp(tree):
    # Versions lay out differently. The one of Debian 12 decides; another one would only quarrel with it.
    if shutil.which("clang-format"):
        said = subprocess.run(["clang-format", "--version"], capture_output=True, text=True, check=False).stdout
        number = re.search(r"version (\d+)", said)
        if number and number[1] != LAYOUT_VERSION:
            tree.skip(f"clang-format {number[1]} is here; the layout is that of clang-format {LAYOUT_VERSION}.")
            return
    _run(tree, ["clang-format", "--dry-run", "-Werror", "--style=file"], list(tree.files("cpp", "tests", "platform", ends=CPP)))


def spelling(tree):
    # Its settings are in .codespellrc; files that are not text it leaves out by itself.
    # It knows English alone.
    other = re.compile(r"assets/(languages/halfcup_(?!en\b)\w+\.ts|pages/\w+/)|platform/(android/res/values-\w+/"
                       r"|ios/(?!en\b)\w+\.lproj/|linux/(halfcup\.desktop|halfcup-exchange\.xml|[\w.]+\.metainfo\.xml\.in)$"
                       r"|web/words/(?!en\b)\w+\.json$)")
    _run(tree, ["codespell"], [f for f in tree.files() if f != "LICENSE" and not other.match(f)])


def scripts(tree):
    shell, python = [], []
    for name in tree.files():
        first = (tree.text(name) or "").split("\n", 1)[0]
        if re.match(r"#!.*\b(ba)?sh\b", first):
            shell.append(name)
        elif name.endswith(".py") or re.match(r"#!.*\bpython3?\b", first):
            python.append(name)
        if first.startswith("#!") and not name.endswith(".in") and not os.access(tree.root / name, os.X_OK):
            tree.complain(name, 1, "starts with #! but is not executable (chmod +x).")
    if shell:
        _run(tree, ["shellcheck"], shell)
    for name in python:
        try:
            compile(pathlib.Path(tree.root / name).read_bytes(), name, "exec")
        except SyntaxError as error:
            tree.complain(name, error.lineno, f"Python {sys.version_info[0]}.{sys.version_info[1]} cannot read this: {error.msg}.")
