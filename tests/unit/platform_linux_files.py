#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""The files by which a Linux desktop and Debian know the program.
usage: platform_linux_files.py SOURCES

Judged by programs that are not ours: GLib and update-mime-database for the type of an exchange file, as desktops use
them, desktop-file-validate, appstreamcli, xmllint and dpkg. Forms: freedesktop.org (shared-mime-info, desktop entry,
AppStream), Debian Policy and its machine-readable copyright format 1.0.
"""

import glob
import os
import re
import shutil
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as ET

KIND = "application/x-halfcup-exchange"
ID = "alt.halfcup.app"
LANG = "{http://www.w3.org/XML/1998/namespace}lang"
MIME = "{http://www.freedesktop.org/standards/shared-mime-info}"


class Missing(Exception):
    """A program from outside is not there: what it would have said is not known."""


def run(*command):
    if not shutil.which(command[0]):
        raise Missing(f"{command[0]} is not there (platform/linux/install-packages check brings it)")
    got = subprocess.run(command, capture_output=True, text=True, check=False)
    return got.returncode, (got.stdout + got.stderr).strip()


def read(*parts):
    with open(os.path.join(*parts), encoding="utf-8") as file:
        return file.read()


def languages(sources):
    """The codes of the languages that the app speaks, English left out: it is the one without a code here."""
    names = glob.glob(os.path.join(sources, "assets", "languages", "halfcup_*.ts"))
    return {os.path.basename(n)[8:-3] for n in names} - {"en"}


def entry_of(folder):
    """The desktop entry as GLib reads it, and GLib's guess for a file name."""
    try:
        from gi.repository import Gio, GLib
    except ImportError as error:
        raise Missing("GLib for Python is not there (Debian's package python3-gi, for /usr/bin/python3)") from error
    entry = GLib.KeyFile()
    entry.load_from_file(os.path.join(folder, "halfcup.desktop"), GLib.KeyFileFlags.KEEP_TRANSLATIONS)
    return entry, lambda name: Gio.content_type_guess(name, None)[0]


def mime_type(sources, folder):
    wrong = []
    packages = os.path.join(os.environ["XDG_DATA_HOME"], "mime", "packages")
    os.makedirs(packages)
    shutil.copy(os.path.join(folder, "halfcup-exchange.xml"), packages)
    code, said = run("update-mime-database", os.path.dirname(packages))
    if code or said:
        return [f"update-mime-database: {said}"]
    entry, guess = entry_of(folder)
    for name, wanted in (("halfcup-2026-06-15-0941.halfcup", KIND), ("washes.csv", "text/csv"),
                         ("all.halfcup-backup", "application/octet-stream")):
        if guess(name) != wanted:
            wrong.append(f"{name} is taken for {guess(name)}")
    if KIND not in entry.get_string_list("Desktop Entry", "MimeType"):
        wrong.append(f"halfcup.desktop does not open {KIND}")
    if entry.get_string("Desktop Entry", "Exec") != "halfcup %f":
        wrong.append("halfcup.desktop does not hand the file to the program")
    comments = ET.parse(os.path.join(folder, "halfcup-exchange.xml")).findall(f"{MIME}mime-type/{MIME}comment")
    told = {c.get(LANG): (c.text or "").strip() for c in comments}
    if set(told) != languages(sources) | {None} or not all(told.values()) or len(set(told.values())) != len(told):
        wrong.append(f"halfcup-exchange.xml says what the file is in {sorted(map(str, told))}, not in each language once")
    return wrong


def desktop_entry(sources, folder):
    code, said = run("desktop-file-validate", os.path.join(folder, "halfcup.desktop"))
    wrong = [f"desktop-file-validate: {said}"] if code or said else []
    entry, _ = entry_of(folder)
    for key in ("GenericName", "Comment", "Keywords"):
        plain = entry.get_string("Desktop Entry", key)
        for code in languages(sources):
            if entry.get_locale_string("Desktop Entry", key, code) == plain:
                wrong.append(f"halfcup.desktop has no {key} in {code}")
    icon = entry.get_string("Desktop Entry", "Icon")
    for name in [f"{size}x{size}/apps/{icon}" for size in (16, 48, 128, 512)] + [f"48x48/mimetypes/{KIND.replace('/', '-')}"]:
        if not os.path.exists(os.path.join(folder, "icons", "hicolor", f"{name}.png")):
            wrong.append(f"platform/linux/icons/hicolor has no {name}.png")
    return wrong


def fill_in(folder, out, website):
    return run("cmake", f"-DOUT={out}", f"-DHALFCUP_WEBSITE={website}", "-P", os.path.join(folder, "metainfo.cmake"))


def judged(file, website):
    """What appstreamcli complains of. Without a website there is none to name, of which 1.0 warns (0.16 does not)."""
    code, said = run("appstreamcli", "validate", "--no-net", file)
    grave = [line for line in said.splitlines() if re.match(r"[EW]:", line)]
    if code and not website and grave and all("url-homepage-missing" in line for line in grave):
        return []
    return [f"appstreamcli: {said}"] if code else []


def metainfo(sources, folder):
    wrong = []
    file = os.path.join(os.environ["XDG_DATA_HOME"], f"{ID}.metainfo.xml")
    # .example belongs to nobody (RFC 2606).
    for website in ("https://halfcup.example/app/", ""):
        code, said = fill_in(folder, file, website)
        if code:
            return [f"metainfo.cmake: {said}"]
        code, said = run("xmllint", "--noout", file)
        if code:
            return [*wrong, f"xmllint: {said}"]
        wrong += judged(file, website)
        root = ET.parse(file).getroot()
        images = [i.text for i in root.iter("image")]
        if bool(website) != bool(images):
            wrong.append(f"with the website '{website}' there are {len(images)} pictures")
        for image in images:
            name = image.rsplit("/", 1)[1]
            if not image.startswith("https://halfcup.example/app/pictures/"):
                wrong.append(f"a picture is looked for at {image}")
            if not os.path.exists(os.path.join(sources, "assets", "pictures", name)):
                wrong.append(f"assets/pictures has no {name}")
    if fill_in(folder, file + "x", "http://halfcup.example")[0] == 0:
        wrong.append("metainfo.cmake takes an address that is not https")
    entry, _ = entry_of(folder)
    summaries = {s.get(LANG): s.text for s in root.findall("summary")}
    wanted = {code: entry.get_locale_string("Desktop Entry", "Comment", code) for code in languages(sources)}
    wanted[None] = entry.get_string("Desktop Entry", "Comment")
    if summaries != wanted:
        wrong.append(f"the summaries of the metainfo are not the comments of the desktop entry: {summaries}")
    for part in ("description/p", "description/ul/li"):
        found = [p.get(LANG) for p in root.findall(part)]
        if any(found.count(code) != found.count(None) for code in languages(sources)):
            wrong.append(f"{part} is not there in each language")
    for part, want in (("id", ID), ("launchable", "halfcup.desktop"), ("provides/mediatype", KIND),
                       ("icon", entry.get_string("Desktop Entry", "Icon"))):
        if root.findtext(part) != want:
            wrong.append(f"the metainfo's {part} is {root.findtext(part)}, not {want}")
    return wrong


def versions(sources, folder):
    """The version stands in three files; the newest of each is the program's."""
    version = re.search(r"project\(Halfcup VERSION (\S+)", read(sources, "CMakeLists.txt"))[1]
    code, said = run("dpkg-parsechangelog", "-l", os.path.join(folder, "debian", "changelog"), "-S", "Version")
    wrong = [] if (code, said) == (0, version) else [f"debian/changelog: '{said}', not {version}"]
    release = re.search(r'<release version="([^"]+)"', read(folder, f"{ID}.metainfo.xml.in"))[1]
    return wrong + ([] if release == version else [f"the newest release in the metainfo is {release}, not {version}"])


def copyright_file(_sources, folder):
    fields = [dict(re.findall(r"^([A-Z][\w-]+):((?:.*\n)(?:[ \t].*\n)*)", part + "\n", re.M))
              for part in re.split(r"\n\n+", read(folder, "debian", "copyright").strip())]
    wrong = []
    if fields[0].get("Format", "").strip() != "https://www.debian.org/doc/packaging-manuals/copyright-format/1.0/":
        wrong.append("debian/copyright does not name its format first")
    texts = {f["License"].split("\n")[0].strip() for f in fields if "License" in f and "Files" not in f}
    for part in fields:
        if "Files" in part and part.get("License", "").strip() not in texts:
            wrong.append(f"debian/copyright has no text for the licence of {part['Files'].strip()}")
    if not any(part.get("Files", "").strip() == "*" for part in fields):
        wrong.append("debian/copyright says nothing of most files")
    return wrong


def qml_packages(sources, folder):
    """A module of QML is found only when the program starts: each one that a page imports is in the list of packages."""
    listed = set(re.findall(r"^build (qml6-module-\S+)", read(folder, "packages"), re.M))
    wanted = set()
    for name in glob.glob(os.path.join(sources, "qml", "**", "*.qml"), recursive=True):
        wanted |= set(re.findall(r"^\s*import\s+(Qt\w*(?:\.\w+)*)", read(name), re.M))
    # The styles of the controls come with the controls.
    names = {module: "qml6-module-" + re.sub(r"^(QtQuick\.Controls)\.\w+$", r"\1", module).lower().replace(".", "-")
             for module in wanted}
    wrong = [f"qml/ imports {m}, but platform/linux/packages has no 'build {p}'" for m, p in names.items() if p not in listed]
    return wrong + ([] if wanted else ["no import was found in qml/"])


def main():
    sources = sys.argv[1]
    folder = os.path.join(sources, "platform", "linux")
    wrong, missing = [], []
    with tempfile.TemporaryDirectory() as data:
        os.environ["XDG_DATA_HOME"] = data
        for check in (mime_type, desktop_entry, metainfo, versions, copyright_file, qml_packages):
            try:
                wrong += [f"{check.__name__}: {sentence}" for sentence in check(sources, folder)]
            except Missing as sentence:
                missing.append(f"Skipped {check.__name__}: {sentence}")
    print("\n".join(wrong + missing) or "A desktop knows the program and its files, and Debian would take them.")
    return 1 if wrong else 77 if missing else 0


if __name__ == "__main__":
    sys.exit(main())
