# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""Licence lines, sizes of files, names at the top level, and paths of one machine."""

import os
import re

from tree import lines

SOURCE = (".cpp", ".h", ".qml", ".js", ".py", ".sh", ".cmake", "CMakeLists.txt", ".in", ".java", ".mm", ".swift")
COPYRIGHT = "SPDX-FileCopyrightText: 2026 The Halfcup developers"
LICENCE = "SPDX-License-Identifier: Apache-2.0"
TOP_LEVEL = ("CMakeLists.txt", "README.md", "DEVELOPERS.md", "LICENSE", "qml", "cpp", "assets", "platform", "tests",
             "demo-data")
# (in which folders, ending, most lines). A test carries its rows of cases along and may be longer.
SIZES = ((("cpp",), (".h",), 150), (("cpp",), (".cpp",), 400), (("qml/parts",), (".qml",), 120), (("qml",), (".qml",), 250),
         (("tests",), (".h",), 250), (("tests",), (".cpp",), 600))
# What every Linux has at its root, and names too common in texts to say anything about a machine.
EVERYWHERE = {"bin", "boot", "data", "dev", "etc", "home", "lib", "lib32", "lib64", "libx32", "lost+found", "media", "mnt",
              "nix", "opt", "proc", "root", "run", "sbin", "snap", "srv", "sys", "tmp", "usr", "var"}


def spdx(tree):
    for name in tree.files():
        script = "." not in name.rsplit("/", 1)[-1] and (tree.text(name) or "").startswith("#!")
        if not (name.endswith(SOURCE) or script):
            continue
        head = "\n".join((tree.text(name) or "").split("\n")[:6])
        for wanted in (COPYRIGHT, LICENCE):
            if wanted not in head:
                tree.complain(name, 1, f"the first lines lack '{wanted}'.")


def sizes(tree):
    for folders, ends, most in SIZES:
        for name in tree.files(*folders, ends=ends):
            # A last line ends in a newline and is not followed by an empty one.
            count = len((tree.text(name) or "").rstrip("\n").split("\n"))
            if count > most:
                tree.complain(name, 0, f"{count} lines; a file of this kind has at most {most}. Split it by what it does.")


def toplevel(tree):
    there = {name.split("/")[0] for name in tree.files()}
    for name in sorted(there):
        if name not in TOP_LEVEL and not name.startswith(".") and name != "CMakePresets.json":
            tree.complain(name, 0, "is not among the names of the top level (DEVELOPERS.md, 'Where things are').")
    for name in TOP_LEVEL:
        if name not in there:
            tree.complain(name, 0, "is missing at the top level.")


def machine_paths(tree):
    """No file may name a place that exists on one machine only: homes, and folders this machine alone has at its root."""
    own = {n for n in os.listdir("/") if n not in EVERYWHERE and not n.startswith(".") and os.path.isdir("/" + n)}
    home = re.compile(r"(?<![\w.~/$}-])(/(?:home|Users)/[A-Za-z][\w.-]*|/(?:root)(?![\w-])|[A-Z]:\\\\?Users\b)")
    alone = re.compile(r"(?<![\w.~/$}:-])/(%s)(?![\w-])" % "|".join(map(re.escape, sorted(own)))) if own else None
    for name in tree.files():
        text = tree.text(name)
        for number, line in lines(text or ""):
            found = home.search(line) or (alone and alone.search(line))
            if found:
                tree.complain(name, number, f"'{found[0]}' is a place of one machine.")
