#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""What needs no hour of the scripts that build and test in another Debian (platform/linux/second-qt, arm64/try).
usage: platform_roots.py SOURCES CMAKE

The scripts themselves make a Debian from the network and take long: what they last found stands at their heads.
"""

import os
import pathlib
import re
import struct
import subprocess
import sys
import tempfile
import unittest
import zlib

SOURCES, CMAKE = pathlib.Path(sys.argv[1]), sys.argv[2]
LINUX = SOURCES / "platform" / "linux"


def call(*command):
    got = subprocess.run([str(c) for c in command], capture_output=True, text=True, check=False, stdin=subprocess.DEVNULL)
    return got.returncode, got.stdout, got.stderr


def lines(path):
    """The rows of a list, as words; without comments."""
    rows = (row.split("#")[0].split() for row in path.read_text(encoding="utf-8").splitlines())
    return [row for row in rows if row]


def names(version, kind="all"):
    code, said, wrong = call(LINUX / "install-packages", "--names", version, kind)
    assert code == 0, wrong
    return said.split()


def png(pixels):
    """A PNG of rows of (red, green, blue), each row by another of the format's five filters that a row can have."""
    packed, above = b"", bytes(3 * len(pixels[0]))
    for y, row in enumerate(pixels):
        flat, kind = bytes(v for pixel in row for v in pixel), y % 5
        left = bytes(3) + flat[:-3]
        corner = bytes(3) + above[:-3]

        def guess(a, b, c):
            if kind == 4:
                return min((a, b, c), key=lambda v: abs(a + b - c - v))
            return (0, a, b, (a + b) // 2)[kind]

        packed += bytes([kind]) + bytes((v - guess(a, b, c)) & 255 for v, a, b, c in zip(flat, left, above, corner))
        above = flat
    head = struct.pack(">IIBBBBB", len(pixels[0]), len(pixels), 8, 2, 0, 0, 0)
    data = b"\x89PNG\r\n\x1a\n"
    for kind, body in ((b"IHDR", head), (b"IDAT", zlib.compress(packed)), (b"IEND", b"")):
        data += struct.pack(">I", len(body)) + kind + body + struct.pack(">I", zlib.crc32(kind + body))
    return data


class Packages(unittest.TestCase):
    def test_the_list_has_the_names_of_debian_12(self):
        self.assertEqual(names("12"), [row[1] for row in lines(LINUX / "packages")])

    def test_only_what_is_in_the_list_is_renamed(self):
        for path in LINUX.glob("packages-*"):
            renamed = dict(lines(path))
            there = names(path.name.split("-")[1])
            for old, new in renamed.items():
                self.assertIn(old, names("12"), f"{path.name}: {old} is not in the list any more")
                self.assertNotIn(old, there)
                self.assertTrue(new == "-" or new in there, new)
            self.assertEqual(len(there), len(names("12")) - list(renamed.values()).count("-"))

    def test_this_debian_has_them(self):
        release = dict(r.split("=", 1) for r in pathlib.Path("/etc/os-release").read_text(encoding="utf-8").splitlines() if "=" in r)
        version = release.get("VERSION_ID", "").strip('"')
        if release.get("ID") != "debian" or version not in ("12", "13"):
            self.skipTest("this is neither Debian 12 nor 13")
        wanted = names(version)
        if version == "12":
            wanted += [row[1] for row in lines(LINUX / "arm64" / "packages") if ":" not in row[1]]
        # Asked of the lists that are here; a machine without lists knows only what is installed.
        known = set(call("apt-cache", "pkgnames")[1].split())
        if "debootstrap" not in known:
            self.skipTest("apt has no lists here")
        self.assertEqual([name for name in wanted if name not in known], [])

    def test_the_kinds_of_the_arm64_list(self):
        rows = lines(LINUX / "arm64" / "packages")
        self.assertEqual({row[0] for row in rows}, {"cross", "phone"})
        self.assertEqual({len(row) for row in rows}, {2})


class WrongCalls(unittest.TestCase):
    def refused(self, *command):
        code, _, said = call(*command)
        self.assertEqual(code, 2, command)
        self.assertRegex(said, r"^usage: platform/linux/")

    def test_each_says_how_it_is_called(self):
        self.refused(LINUX / "install-packages")
        self.refused(LINUX / "install-packages", "--names", "trixie", "all")
        self.refused(LINUX / "install-packages", "--names", "13")
        self.refused(LINUX / "debian-root")
        self.refused(LINUX / "debian-root", "make", "folder")
        self.refused(LINUX / "debian-root", "run", "folder")
        self.refused(LINUX / "second-qt", "--in")
        self.refused(LINUX / "second-qt", "--help")
        self.refused(LINUX / "arm64" / "try", "--in")
        self.refused(LINUX / "arm64" / "try", "rots")

    def test_nobodys_files_are_thrown_away(self):
        with tempfile.TemporaryDirectory() as folder:
            file = pathlib.Path(folder, "records.db")
            file.write_text("kept")
            code, _, said = call(LINUX / "debian-root", "make", folder, "bookworm")
            self.assertEqual((code, file.read_text()), (1, "kept"))
            self.assertIn("not empty, and not a Debian", said)
            code, _, said = call(LINUX / "debian-root", "run", folder, "--", "true")
            self.assertEqual(code, 1)
            self.assertIn("no Debian that", said)
            code, _, said = call(LINUX / "debian-root", "copy", folder)
            self.assertEqual((code, os.listdir(folder)), (1, ["records.db"]))

    def test_a_debian_of_another_kind_is_not_taken(self):
        with tempfile.TemporaryDirectory() as folder:
            pathlib.Path(folder, "etc").mkdir()
            pathlib.Path(folder, "etc", "halfcup-root").write_text("bookworm amd64\n")
            code, _, said = call(LINUX / "debian-root", "make", folder, "trixie", "amd64")
            self.assertEqual(code, 1)
            self.assertIn("of another kind (bookworm amd64, not trixie amd64)", said)
            self.assertEqual(call(LINUX / "debian-root", "make", folder, "bookworm", "amd64"), (0, "", ""))


class Toolchain(unittest.TestCase):
    def test_it_is_for_arm64(self):
        file = LINUX / "arm64" / "toolchain.cmake"
        with tempfile.TemporaryDirectory() as folder:
            script = pathlib.Path(folder, "ask.cmake")
            script.write_text(f'include("{file}")\nmessage("${{CMAKE_SYSTEM_NAME}} ${{CMAKE_SYSTEM_PROCESSOR}} '
                              '${CMAKE_CXX_COMPILER} ${CMAKE_C_COMPILER} ${QT_HOST_PATH}")\n')
            code, _, said = call(CMAKE, "-P", script)
        self.assertEqual((code, said.split()), (0, ["Linux", "aarch64", "aarch64-linux-gnu-g++", "aarch64-linux-gnu-gcc", "/usr"]))


class Pictures(unittest.TestCase):
    def compared(self, one, two):
        with tempfile.TemporaryDirectory() as here, tempfile.TemporaryDirectory() as there:
            for folder, files in ((here, one), (there, two)):
                for name, data in files.items():
                    path = pathlib.Path(folder, name)
                    path.parent.mkdir(exist_ok=True)
                    path.write_bytes(data)
            code, said, wrong = call(sys.executable, "-B", LINUX / "arm64" / "compare.py", here, there)
        self.assertEqual(wrong, "")
        return code, said

    def setUp(self):
        # A page of 100 x 100 with a dark slope on a colour that changes: all filters of PNG have something to do.
        self.page = [[(x, 255 - y, (x * y) % 256) if abs(x - y) > 3 else (20, 20, 20) for x in range(100)] for y in range(100)]

    def changed(self, places, colour):
        page = [list(row) for row in self.page]
        for x, y in places:
            page[y][x] = colour
        return png(page)

    def test_the_same_is_the_same(self):
        code, said = self.compared({"a/1.png": png(self.page)}, {"a/1.png": png(self.page)})
        self.assertEqual(code, 0)
        self.assertIn("1 pictures, 1 the same in every pixel, 0 complaints", said)

    def test_an_edge_may_differ(self):
        code, said = self.compared({"1.png": png(self.page)}, {"1.png": self.changed([(i, 40) for i in range(10, 20)], (255, 0, 255))})
        self.assertEqual(code, 0, said)
        self.assertRegex(said, r"10 of 10000 pixels beyond 32.*edges alone")

    def test_a_light_shade_everywhere_is_no_difference(self):
        shaded = [[tuple(min(255, v + 20) for v in pixel) for pixel in row] for row in self.page]
        self.assertEqual(self.compared({"1.png": png(self.page)}, {"1.png": png(shaded)})[0], 0)

    def test_a_dot_that_is_missing_is_found(self):
        dot = [(60 + x, 20 + y) for x in range(3) for y in range(3)]
        code, said = self.compared({"1.png": png(self.page)}, {"1.png": self.changed(dot, (255, 0, 255))})
        self.assertEqual(code, 1)
        self.assertRegex(said, r"1.png: 9 of 10000 pixels differ")

    def test_many_edges_are_found(self):
        code, _ = self.compared({"1.png": png(self.page)}, {"1.png": self.changed([(x, 40) for x in range(0, 99, 2)], (255, 0, 255))})
        self.assertEqual(code, 1)

    def test_pictures_that_cannot_be_held_against_each_other(self):
        good = png(self.page)
        for one, two, sentence in (
                ({"1.png": good}, {}, "1.png: is in one folder only"),
                ({}, {}, "nothing to compare"),
                ({"1.png": good}, {"1.png": png(self.page[:50])}, "another size"),
                ({"1.png": good}, {"1.png": b"GIF"}, "is no PNG"),
                ({"1.png": good}, {"1.png": good[:60]}, "1.png: ")):
            code, said = self.compared(one, two)
            self.assertEqual(code, 1)
            self.assertIn(sentence, said)

    def test_a_wrong_call(self):
        self.assertEqual(call(sys.executable, "-B", LINUX / "arm64" / "compare.py", "one")[0], 2)


class Heads(unittest.TestCase):
    def test_each_says_when_it_last_passed(self):
        for script in (LINUX / "second-qt", LINUX / "arm64" / "try"):
            head = script.read_text(encoding="utf-8").split("\nset -")[0]
            self.assertTrue(re.search(r"^# (Passed|Tried) last on \d{1,2} \w+ 20\d\d", head, re.M), script)


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
