#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""Three phones, one exchange folder, carried by a real synchroniser.

Three instances of syncthing on the loopback alone (no discovery, no relays, no reports, no upgrades) keep three
folders alike. Three databases record washes and exchange through them, while connections between the instances come
and go. In the end all three databases hold the same, and nothing any of them was given is missing.

synchronised_folder.py path/to/halfcup-desk. Exit code 0 when all holds, 77 (skipped) without syncthing.
"""
import contextlib
import json
import pathlib
import random
import shutil
import socket
import sqlite3
import subprocess
import sys
import tempfile
import time
import urllib.request
import xml.etree.ElementTree as ElementTree

LIMIT_S = 200
SHARED = ("SELECT * FROM yard", "SELECT * FROM colony", "SELECT * FROM sample",
          "SELECT record_id, field, stamp, kind, quote(value) FROM revision",
          "SELECT sample_id, stamp, number, rinse, change, typed, at_ms FROM count_event",
          "SELECT * FROM joined", "SELECT * FROM waiting")


def free_ports(count):
    sockets = [socket.socket() for _ in range(count)]
    for each in sockets:
        each.bind(("127.0.0.1", 0))
    ports = [each.getsockname()[1] for each in sockets]
    for each in sockets:
        each.close()
    return ports


class Instance:
    """One phone: its synchroniser, its folder, its database."""

    def __init__(self, desk, root, number, ports):
        self.desk = desk
        self.number = number
        self.home = root / f"home{number}"
        self.folder = root / f"folder{number}"
        self.database = root / f"phone{number}.db"
        self.folder.mkdir()
        self.database.touch()
        self.gui, self.port = ports
        self.key = f"loopback-only-{number}"
        self.process = None
        subprocess.run(["syncthing", "generate", f"--home={self.home}", "--no-default-folder", "--skip-port-probing"],
                       check=True, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, timeout=60)
        self.device = subprocess.run(["syncthing", f"--home={self.home}", "--device-id"], check=True,
                                     capture_output=True, text=True, timeout=60).stdout.strip()

    def configure(self, all_instances):
        path = self.home / "config.xml"
        tree = ElementTree.parse(path)
        root = tree.getroot()
        for name in ("folder", "device"):
            for old in root.findall(name):
                root.remove(old)
        folder = ElementTree.SubElement(root, "folder", id="exchange", label="exchange", path=str(self.folder),
                                        type="sendreceive", rescanIntervalS="2", fsWatcherEnabled="true",
                                        fsWatcherDelayS="1")
        for other in all_instances:
            ElementTree.SubElement(folder, "device", id=other.device)
            device = ElementTree.SubElement(root, "device", id=other.device, name=f"phone{other.number}",
                                            compression="never", introducer="false")
            ElementTree.SubElement(device, "address").text = f"tcp://127.0.0.1:{other.port}"
        gui = root.find("gui")
        gui.set("enabled", "true")
        gui.find("address").text = f"127.0.0.1:{self.gui}"
        gui.find("apikey").text = self.key
        options = root.find("options")
        for old in options.findall("listenAddress"):
            options.remove(old)
        for name, value in {"listenAddress": f"tcp://127.0.0.1:{self.port}", "globalAnnounceEnabled": "false",
                            "localAnnounceEnabled": "false", "relaysEnabled": "false", "natEnabled": "false",
                            "urAccepted": "-1", "urSeen": "9999", "autoUpgradeIntervalH": "0",
                            "crashReportingEnabled": "false", "startBrowser": "false", "reconnectionIntervalS": "1",
                            "stunKeepaliveStartS": "0"}.items():
            found = options.find(name)
            if found is None:
                found = ElementTree.SubElement(options, name)
            found.text = value
        tree.write(path)

    def start(self):
        self.process = subprocess.Popen(
            ["syncthing", "serve", f"--home={self.home}", "--no-browser", "--no-restart", "--no-upgrade"],
            stdout=open(self.home / "log.txt", "w", encoding="utf-8"), stderr=subprocess.STDOUT,
            env={"PATH": "/usr/sbin:/usr/bin:/sbin:/bin", "HOME": str(self.home), "STNOUPGRADE": "1"})

    def stop(self):
        if self.process:
            self.process.terminate()
            try:
                self.process.wait(20)
            except subprocess.TimeoutExpired:
                self.process.kill()

    def ask(self, path, post=False):
        request = urllib.request.Request(f"http://127.0.0.1:{self.gui}/rest/{path}", headers={"X-API-Key": self.key},
                                         method="POST" if post else "GET")
        with urllib.request.urlopen(request, timeout=10) as answer:
            text = answer.read()
        return json.loads(text) if text.strip().startswith(b"{") else None

    def is_up(self):
        with contextlib.suppress(OSError):
            return self.ask("system/ping") == {"ping": "pong"}
        return False

    def cut_off(self, others, off):
        for other in others:
            if other is not self:
                self.ask(f"system/{'pause' if off else 'resume'}?device={other.device}", post=True)
                other.ask(f"system/{'pause' if off else 'resume'}?device={self.device}", post=True)

    def record(self, row):
        """One wash, as an office would type it into a table."""
        table = self.home / "wash.csv"
        table.write_text("date,yard,colony,bees,mites\n" + ",".join(map(str, row)) + "\n", encoding="utf-8")
        self.run("import", self.database, table)

    def exchange(self):
        self.run("folder", self.database, self.folder)
        self.ask("db/scan?folder=exchange", post=True)

    def run(self, verb, *words):
        done = subprocess.run([self.desk, verb, *map(str, words)], capture_output=True, text=True, timeout=60)
        if done.returncode != 0:
            raise SystemExit(f"halfcup-desk {verb} ended with {done.returncode}: {done.stderr}{done.stdout}")
        return done.stdout

    def dump(self):
        with contextlib.closing(sqlite3.connect(f"file:{self.database}?mode=ro", uri=True)) as database:
            return [sorted(map(repr, database.execute(text))) for text in SHARED]


def wait_for(what, holds, limit_s=60):
    until = time.monotonic() + limit_s
    while not holds():
        if time.monotonic() > until:
            raise SystemExit(f"waited {limit_s} s for {what}")
        time.sleep(0.25)


def play(phones, chance, until):
    given = set()

    def record(phone):
        row = (f"2026-{chance.randint(4, 9):02d}-{chance.randint(1, 28):02d}", f"Yard {chance.randint(1, 3)}",
               chance.randint(1, 6), 300, chance.randint(0, 25))
        phone.record(row)
        given.add((row[0], row[3], row[4]))

    for step in range(6):
        for phone in phones:
            record(phone)
            phone.exchange()
        if step == 1:
            phones[2].cut_off(phones, True)  # the yard has no signal
        if step == 3:
            phones[2].cut_off(phones, False)
            phones[0].cut_off(phones, True)
        if step == 4:
            phones[0].cut_off(phones, False)
        if step == 2:
            # What synchronisers and people leave lying about: half a file, a conflict copy, a copy under a name.
            whole = next(phones[1].folder.glob("halfcup-*.halfcup"))
            bytes_of = whole.read_bytes()
            (phones[1].folder / ".syncthing.half.halfcup.tmp").write_bytes(bytes_of[:700])
            (phones[1].folder / "halfcup-x.sync-conflict-20260620-101500-ABCDEFG.halfcup").write_bytes(bytes_of)
            (phones[0].folder / "on its way.halfcup").write_bytes(bytes_of[:-900])
        time.sleep(chance.random())

    # Until nothing changes any more: each takes in what came and adds what is missing.
    dumps = []
    while time.monotonic() < until:
        for phone in phones:
            phone.exchange()
        dumps = [phone.dump() for phone in phones]
        if dumps[0] == dumps[1] == dumps[2]:
            break
        time.sleep(1)
    if not dumps or not dumps[0] == dumps[1] == dumps[2]:
        raise SystemExit("the three databases are not equal: "
                         + "; ".join(f"{len(d[2])} samples, {len(d[3])} revisions" for d in dumps))
    samples = len(dumps[0][2])
    with contextlib.closing(sqlite3.connect(phones[0].database)) as database:
        there = {(day, int(bees), mites) for day, bees, mites in database.execute(
            "SELECT date(coalesce(scooped_at_ms, started_at_ms) / 1000, 'unixepoch'), bees_mean, mites FROM sample")}
    missing = given - there
    if missing:
        raise SystemExit(f"{len(missing)} washes are missing: {sorted(missing)}")
    for phone in phones:
        own = [path.name for path in phone.folder.glob("halfcup-*.halfcup")]
        if len(own) < 3:
            raise SystemExit(f"only {own} are in a folder")
    print(f"three databases are equal: {samples} samples, {len(dumps[0][3])} revisions")


def main():
    if not shutil.which("syncthing"):
        print("skipped: syncthing (Debian: syncthing) is not installed.")
        return 77
    desk = str(pathlib.Path(sys.argv[1]).resolve())
    chance = random.Random(20260615)
    with tempfile.TemporaryDirectory(prefix="halfcup-folder-") as name:
        ports = free_ports(6)
        phones = [Instance(desk, pathlib.Path(name), i, (ports[2 * i], ports[2 * i + 1])) for i in range(3)]
        try:
            for phone in phones:
                phone.configure(phones)
                phone.start()
            for phone in phones:
                wait_for("a synchroniser to start", phone.is_up)
            play(phones, chance, time.monotonic() + LIMIT_S)
        finally:
            for phone in phones:
                phone.stop()
    return 0


if __name__ == "__main__":
    sys.exit(main())
