#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""halfcup --self-test, as somebody calls it who has just installed it.
usage: platform_self_test.py HALFCUP

It passes on a computer without display, session bus and receiver; it says of each service whether it is here, and of one that
is not what is done instead; it leaves nothing behind; and where it cannot write, it fails and says so.
"""

import os
import re
import subprocess
import sys
import tempfile

PROGRAM = sys.argv[1]
CHECKS = ("database", "handbook", "records", "load", "pages")
SERVICES = ("tones", "voice", "position", "file chooser", "share sheet", "screen kept on", "vibration")
WRONG = []
PATIENCE = float(os.environ.get("HALFCUP_TEST_PATIENCE", "1"))


def run(home, *arguments, **changed):
    environment = {"HOME": home, "XDG_DATA_HOME": os.path.join(home, "data"), "XDG_CACHE_HOME": os.path.join(home, "cache"),
                   "XDG_RUNTIME_DIR": home, "DBUS_SESSION_BUS_ADDRESS": "unix:path=/nonexistent", "PATH": os.environ["PATH"],
                   "LC_ALL": "C.UTF-8", "TMPDIR": os.path.join(home, "tmp")}
    environment.update(changed)
    os.makedirs(environment["TMPDIR"], exist_ok=True) if "TMPDIR" not in changed else None
    done = subprocess.run([PROGRAM, "--self-test", *arguments], env=environment, timeout=100 * PATIENCE, capture_output=True, text=True, check=False)
    lines = dict((m[2], (m[1], m[3] or "")) for m in
                 re.finditer(r"^(ok|FAILED|here|not here) +([a-z ]+?)(?:: (.*))?$", done.stdout, re.M))
    return done, lines


def must(holds, sentence):
    if not holds:
        WRONG.append(sentence)


def left_in(home):
    """Caches of other libraries (fonts, the speech server) are not ours to forbid."""
    found = []
    for folder, _, files in os.walk(home):
        found += [os.path.relpath(os.path.join(folder, f), home) for f in files]
    return [f for f in found if not f.startswith("cache" + os.sep + "fontconfig") and "speech-dispatcher" not in f]


with tempfile.TemporaryDirectory() as home:
    done, lines = run(home)
    must(done.returncode == 0, f"ends with {done.returncode}: {done.stdout}{done.stderr}")
    must(set(lines) == set(CHECKS + SERVICES), f"speaks of {sorted(lines)}")
    for name in CHECKS:
        must(lines.get(name, ("", ""))[0] == "ok", f"{name}: {lines.get(name)}")
    for name in SERVICES:
        state, note = lines.get(name, ("", ""))
        must(state in ("here", "not here"), f"{name}: {state}")
        must(state == "here" or len(note) > 20, f"{name} is not here, and nothing is said to be done instead")
    # Without a bus there is no portal and no screen saver: what is said follows what is there.
    for name in ("file chooser", "share sheet", "screen kept on"):
        must(lines.get(name, ("", ""))[0] == "not here", f"without a session bus there is a {name}: {lines.get(name)}")
    must(not left_in(home), f"leaves {left_in(home)}")

    done, lines = run(home, "--position", "none")
    must(done.returncode == 0 and lines.get("position", ("",))[0] == "not here", f"without a receiver: {lines.get('position')}")

    # A recording of one minute beside the sea, checksums as NMEA 0183 has them; the place is invented.
    log = os.path.join(home, "log.nmea")
    with open(log, "w", encoding="ascii") as file:
        for second in range(60):
            for body in (f"GPRMC,0941{second:02d}.00,A,4807.0380,N,01131.0000,E,0.0,0.0,150626,,,A",
                         f"GPGGA,0941{second:02d}.00,4807.0380,N,01131.0000,E,1,08,0.9,545.4,M,46.9,M,,"):
                total = 0
                for letter in body:
                    total ^= ord(letter)
                file.write(f"${body}*{total:02X}\r\n")
    done, lines = run(home, "--position", f"nmea:file:{log}")
    must(done.returncode == 0 and lines.get("position", ("",))[0] == "here", f"with a receiver: {lines.get('position')}")

    done, lines = run(home, TMPDIR="/proc")
    must(done.returncode == 1 and lines.get("database", ("",))[0] == "FAILED", f"with no temporary folder: {done.stdout}")
    help_text = subprocess.run([PROGRAM, "--help"], env=dict(os.environ, QT_QPA_PLATFORM="offscreen"), timeout=60, capture_output=True,
                               text=True, check=False).stdout
    must("--self-test" in help_text, "--help does not speak of --self-test")

print("\n".join(WRONG) or "The self-test says what is here and what is not, and leaves nothing.")
sys.exit(1 if WRONG else 0)
