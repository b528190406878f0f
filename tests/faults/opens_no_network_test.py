#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""No connection leaves the phone unless the keeper named a receiver: what the built programs could call, and what the
running app does call, seen by the system (nm, readelf, strace).

opens_no_network_test.py HALFCUP HALFCUP_DESK LIBRARY   (the one that the app loads by itself)
"""

import pathlib
import re
import shutil
import socket
import subprocess
import sys
import tempfile
import unittest

HALFCUP, DESK, LIBRARY = sys.argv[1:4]
del sys.argv[1:4]

# The C library's ways into a network, and out of a program (man 2 socket, man 3 getaddrinfo, man 3 exec).
CALLS = re.compile(r"(?:socket|socketpair|connect|bind|listen|accept4?|send|sendto|sendmsg|recv|recvfrom|recvmsg|getaddrinfo"
                   r"|gethostby\w+|res_\w+|curl_\w+|SSL_\w+|system|popen|posix_spawnp?|exec[lv]\w*|v?fork|dlopen)")
# Qt Network's classes that a receiver on the network needs; the serial line and GeoClue need none.
MAY_USE = {"QAbstractSocket", "QTcpSocket"}
NETWORK_CLASS = re.compile(r"\b(QAbstractSocket|QTcpSocket|QTcpServer|QUdpSocket|QSctp\w+|QSsl\w+|QDtls\w*|QNetwork\w+|QHttp\w+"
                           r"|QHostInfo|QHostAddress|QDns\w+|QLocalSocket|QLocalServer|QAuthenticator|QHsts\w+|QWebSocket\w*"
                           r"|QDesktopServices|QProcess)::")
FAMILY = re.compile(r"\bsocket\((\w+),")
ADDRESS = re.compile(r"sa_family=(AF_INET6?), sin6?_port=htons\((\d+)\), .*?(?:inet_addr\(\"([^\"]+)\"\)|AF_INET6, \"([^\"]+)\")")


def said_by(*words):
    return subprocess.run(words, capture_output=True, text=True, errors="replace", check=True, timeout=60).stdout


def wanted_by(program):
    """Names of functions that the program takes from libraries."""
    names = [line.split()[-1].split("@")[0] for line in said_by("nm", "-D", "--undefined-only", program).splitlines()]
    assert len(names) > 50, "nm has found next to nothing"
    return names


def libraries_of(program):
    return set(re.findall(r"NEEDED.*\[(\S+?)\.so", said_by("readelf", "-d", "--wide", program)))


class Programs(unittest.TestCase):
    def test_neither_calls_the_system_for_a_connection_or_a_program(self):
        for program, may in ((HALFCUP, ["dlopen"]), (DESK, []), (LIBRARY, [])):
            self.assertEqual([name for name in wanted_by(program) if CALLS.fullmatch(name)], may, program)

    def test_the_app_loads_one_library_by_itself(self):
        names = re.findall(r"\S+\.so\b\S*", said_by("readelf", "--string-dump=.rodata", HALFCUP))
        self.assertEqual(set(names), {pathlib.Path(LIBRARY).name})

    def test_the_app_can_reach_a_receiver_and_nothing_else(self):
        readable = said_by("nm", "-DC", "--undefined-only", HALFCUP)
        self.assertEqual(set(NETWORK_CLASS.findall(readable)), MAY_USE)
        self.assertEqual(NETWORK_CLASS.findall(said_by("nm", "-DC", "--undefined-only", LIBRARY)), [])

    def test_the_desk_has_no_network_at_all(self):
        libraries = libraries_of(DESK)
        self.assertIn("libsqlite3", libraries)
        self.assertFalse({name for name in libraries if re.search(r"Network|Positioning|DBus|Qml|curl|ssl", name)}, libraries)


class Running(unittest.TestCase):
    def setUp(self):
        if not shutil.which("strace"):
            self.skipTest("strace is not here")
        tried = subprocess.run(["strace", "-e", "trace=network", "true"], capture_output=True, timeout=60, check=False)
        if tried.returncode != 0:
            self.skipTest("this machine does not let strace look at a program")
        self.place = tempfile.TemporaryDirectory()
        self.folder = pathlib.Path(self.place.name)
        self.folder.chmod(0o700)

    def tearDown(self):
        self.place.cleanup()

    def network_calls(self, *words):
        """What the app and all it starts ask of the network while every page is opened once."""
        log = self.folder / "calls"
        environment = {"HOME": str(self.folder), "XDG_RUNTIME_DIR": str(self.folder), "PATH": "/usr/bin:/bin", "TZ": "UTC",
                       "LC_ALL": "C.UTF-8", "QT_QPA_PLATFORM": "offscreen", "QT_QUICK_BACKEND": "software"}
        done = subprocess.run(["strace", "-f", "-qq", "-s", "200", "-e", "trace=network", "-o", log, HALFCUP, "--self-test", *words],
                              capture_output=True, text=True, env=environment, timeout=280, check=False)
        self.assertEqual(done.returncode, 0, done.stdout + done.stderr)
        return log.read_text(errors="replace")

    def test_nothing_leaves_the_phone(self):
        calls = self.network_calls("--demo")
        self.assertEqual(set(FAMILY.findall(calls)) - {"AF_UNIX"}, set(), calls)
        self.assertEqual(ADDRESS.findall(calls), [])

    def test_a_receiver_that_the_keeper_named_is_all_that_is_reached(self):
        # It shows as well that this test would have seen a connection.
        with socket.create_server(("127.0.0.1", 0)) as listener:
            port = str(listener.getsockname()[1])
            calls = self.network_calls("--demo", "--position", f"nmea:tcp://127.0.0.1:{port}")  # the system takes the call
        reached = {(where or where6, at) for _, at, where, where6 in ADDRESS.findall(
            "\n".join(line for line in calls.splitlines() if re.search(r"\b(?:connect|sendto|sendmsg)\(", line)))}
        self.assertEqual(reached, {("127.0.0.1", port)}, calls)


if __name__ == "__main__":
    unittest.main()
