# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""The files a check looks at, and how it complains. Shared by all checks of the house."""

import os
import pathlib
import re
import subprocess

CPP = (".cpp", ".h")


class Tree:
    """The files of one checkout, and the complaints about them."""

    def __init__(self, root):
        self.root = pathlib.Path(root).resolve()
        self.complaints = []
        self.looked_at = 0
        self.skipped = ""
        self._files = self._tracked()
        if self._files is None:
            self._files = self._walked()

    def _tracked(self):
        """What git tracks: somebody's scratch files are not the project. None where this is no git checkout."""
        if not (self.root / ".git").exists():
            return None
        clean = {k: v for k, v in os.environ.items() if not k.startswith("GIT_")}
        # The clone may belong to another user, as it does where a container mounts it.
        got = subprocess.run(
            ["git", "-c", f"safe.directory={self.root}", "-C", str(self.root), "ls-files", "-z"],
            capture_output=True, env=clean, check=False)
        if got.returncode != 0:
            return None
        names = got.stdout.decode("utf-8", "surrogateescape").split("\0")
        return sorted(n for n in names if n and (self.root / n).is_file())

    def _walked(self):
        found = []
        for folder, folders, files in os.walk(self.root):
            folders[:] = [f for f in folders if f not in (".git", "__pycache__") and not f.startswith("build")]
            found += [str((pathlib.Path(folder) / f).relative_to(self.root)) for f in files]
        return sorted(found)

    def files(self, *under, ends=None):
        """Names of files in the given folders (all, if none) with one of the given endings (any, if none)."""
        for name in self._files:
            if under and not any(name.startswith(u.rstrip("/") + "/") for u in under):
                continue
            if ends and not name.endswith(tuple(ends)):
                continue
            self.looked_at += 1
            yield name

    def text(self, name):
        """The file's text; None for a picture, a sound or another file that is not text."""
        data = (self.root / name).read_bytes()
        if b"\0" in data:
            return None
        return data.decode("utf-8", "replace")

    def has(self, name):
        return (self.root / name).exists()

    def skip(self, sentence):
        """This check cannot be made here; ctest shows it as skipped."""
        self.skipped = sentence

    def complain(self, name, line, sentence):
        where = f"{name}:{line}" if line else name
        self.complaints.append(f"{where}: {sentence}")


def without_comments(text):
    """C++, QML or JavaScript with comments blanked out; line numbers stay, and so do strings."""
    pattern = re.compile(r'"(?:\\.|[^"\\\n])*"|//[^\n]*|/\*.*?\*/', re.S)
    return pattern.sub(lambda m: m[0] if m[0][0] == '"' else "\n" * m[0].count("\n"), text)


def lines(text):
    return enumerate(text.split("\n"), start=1)
