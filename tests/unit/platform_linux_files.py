#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""What a Linux desktop makes of an exchange file: its type by its ending, and the program that opens it.
usage: platform_linux_files.py SOURCES

Read by GLib, as desktops do; the forms of both files are those of freedesktop.org (shared-mime-info, desktop entry).
"""

import os
import shutil
import subprocess
import sys
import tempfile

KIND = "application/x-halfcup-exchange"


def main():
    if not shutil.which("update-mime-database"):
        print("Skipped: update-mime-database is not there (Debian's package shared-mime-info)")
        return 77
    folder = os.path.join(sys.argv[1], "platform", "linux")
    with tempfile.TemporaryDirectory() as data:
        packages = os.path.join(data, "mime", "packages")
        os.makedirs(packages)
        shutil.copy(os.path.join(folder, "halfcup-exchange.xml"), packages)
        os.environ["XDG_DATA_HOME"] = data
        told = subprocess.run(["update-mime-database", os.path.join(data, "mime")], capture_output=True, text=True)
        if told.returncode or told.stderr:
            print(f"update-mime-database: {told.stderr}")
            return 1
        try:
            import gi
            from gi.repository import Gio, GLib
        except ImportError:
            print("Skipped: GLib for Python is not there (Debian's package python3-gi, for /usr/bin/python3)")
            return 77
        wrong = []
        for name, wanted in (("halfcup-2026-06-15-0941.halfcup", KIND), ("washes.csv", "text/csv"),
                             ("all.halfcup-backup", "application/octet-stream")):
            guessed = Gio.content_type_guess(name, None)[0]
            if guessed != wanted:
                wrong.append(f"{name} is taken for {guessed}")
        entry = GLib.KeyFile()
        entry.load_from_file(os.path.join(folder, "halfcup.desktop"), GLib.KeyFileFlags.NONE)
        if KIND not in entry.get_string_list("Desktop Entry", "MimeType"):
            wrong.append(f"halfcup.desktop does not open {KIND}")
        if entry.get_string("Desktop Entry", "Exec") != "halfcup %f":
            wrong.append("halfcup.desktop does not hand the file to the program")
    print("\n".join(wrong) or "An exchange file is known by its ending and opened by halfcup.")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
