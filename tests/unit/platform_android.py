#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""What Android is told about the program, as far as that can be looked at without its SDK.
usage: platform_android.py SOURCES

aapt2 (Debian's package aapt) links the manifest and the resources against Android's own framework-res.apk and then says
what Android would see. The attributes of the manifest are those of developer.android.com, "App manifest file".
"""

import glob
import os
import re
import shutil
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as ET

FRAMEWORK = "/usr/share/android-framework-res/framework-res.apk"
A = "{http://schemas.android.com/apk/res/android}"
PERMISSIONS = {"android.permission." + p for p in ("ACCESS_COARSE_LOCATION", "ACCESS_FINE_LOCATION", "VIBRATE")}
OPTIONAL = ("faketouch", "touchscreen", "location", "location.gps", "location.network")
DENSITIES = {"mdpi": 48, "hdpi": 72, "xhdpi": 96, "xxhdpi": 144, "xxxhdpi": 192}

# File, what is spoilt in it, by what; those of the manifest first, so that they are linked with the good resources.
# Each must be refused: else the silence of aapt2 on the good files proves nothing.
SPOILT = (
    ("AndroidManifest.xml", 'android:exported="true"', 'android:exposed="true"'),
    ("AndroidManifest.xml", 'android:exported="true"', 'android:exported="perhaps"'),
    ("AndroidManifest.xml", 'android:launchMode="singleTop"', 'android:launchMode="alone"'),
    ("AndroidManifest.xml", "@mipmap/icon", "@mipmap/another"),
    ("AndroidManifest.xml", "@string/open_records", "@string/not_there"),
    ("AndroidManifest.xml", 'package="alt.halfcup.app"', ""),
    ("AndroidManifest.xml", "</application>", ""),
    ("AndroidManifest.xml", "<activity", "<activities><activity"),
    ("res/values/styles.xml", "android:windowBackground", "android:windowForeground9"),
    ("res/values/colors.xml", "#00527F", "blue"),
    ("res/values/strings.xml", 'name="hand_on"', 'nom="hand_on"'),
    ("res/drawable/icon_cup.xml", "android:viewportWidth=\"108\"", "android:viewportWidth=\"wide\""),
    ("res/mipmap-anydpi-v26/icon.xml", "@drawable/icon_cup", "@drawable/icon_mug"),
)


def filled_in(manifest):
    """As androiddeployqt does it (Qt's "Qt for Android Manifest File Configuration")."""
    for mark, value in (("VERSION_CODE", "100"), ("VERSION_NAME", "0.1.0"), ("APP_LIB_NAME", "halfcup"), ("APP_ARGUMENTS", "")):
        manifest = manifest.replace(f"-- %%INSERT_{mark}%% --", value)
    return manifest


def link(folder, work, compile_too=True):
    """(whether aapt2 took it, what it said, the package it made); without compiling, the resources of the time before."""
    with open(os.path.join(folder, "AndroidManifest.xml"), encoding="utf-8") as file:
        text = filled_in(file.read())
    manifest, package, compiled = (os.path.join(work, n) for n in ("AndroidManifest.xml", "halfcup.apk", "res.zip"))
    with open(manifest, "w", encoding="utf-8") as file:
        file.write(text)
    said = ""
    for command in ([["aapt2", "compile", "--dir", os.path.join(folder, "res"), "-o", compiled]] if compile_too else []) + [
                    ["aapt2", "link", "-I", FRAMEWORK, "--manifest", manifest, "--min-sdk-version", "23",
                     "--target-sdk-version", "29", "-o", package, compiled]]:
        got = subprocess.run(command, capture_output=True, text=True, check=False)
        said += got.stdout + got.stderr
        if got.returncode:
            return False, said.strip(), package
    return True, said.strip(), package


def seen_by_android(package):
    """What aapt2 finds in the linked package."""
    said = subprocess.run(["aapt2", "dump", "badging", package], capture_output=True, text=True, check=False).stdout
    wrong = []
    asked = set(re.findall(r"^uses-permission(?:-sdk-\d+)?: name='([^']+)'", said, re.M))
    if asked != PERMISSIONS:
        wrong.append(f"the package asks for {sorted(asked)}")
    if re.findall(r"^\s*uses-(?:implied-)?feature: .*", said, re.M):
        wrong.append(f"the package wants {re.findall(r'uses-(?:implied-)?feature: (.*)', said)} of the phone")
    locales = re.search(r"^locales: (.*)$", said, re.M)
    if not locales or set(re.findall(r"'([^']+)'", locales[1])) != {"--_--", "de", "es", "fr"}:
        wrong.append(f"the package speaks {locales and locales[1]}")
    if "launchable-activity: name='alt.halfcup.app.HalfcupActivity'  label='Halfcup'" not in said:
        wrong.append("the package has no activity that is started from the list of apps")
    if "supports-screens: 'small' 'normal' 'large' 'xlarge'" not in said:
        wrong.append("the package does not fit all sizes of glass")
    return wrong


def manifest_itself(folder):
    """What a package can hold and still be wrong."""
    with open(os.path.join(folder, "AndroidManifest.xml"), encoding="utf-8") as file:
        text = file.read()
    try:
        root = ET.fromstring(text)
    except ET.ParseError as error:
        return [f"AndroidManifest.xml: {error}"]
    # Android takes a touch screen, and what permissions point to, for required where a manifest says nothing.
    optional = {f.get(A + "name") for f in root.findall("uses-feature") if f.get(A + "required") == "false"}
    wrong = [f"{name} is not said to be optional" for name in OPTIONAL if "android.hardware." + name not in optional]
    for permission in re.findall(r"<uses-permission[^>]*android.permission.(\w+)", text):
        if not re.search(rf"-->\s*<uses-permission[^>]*{permission}", text):
            wrong.append(f"{permission} is asked for without a reason above it")
    if "%%INSERT_PERMISSIONS" in text or "%%INSERT_FEATURES" in text:
        wrong.append("Qt may add permissions and features")
    sources = os.path.join(folder, "src", root.get("package").replace(".", os.sep))
    application = root.find("application")
    if application.get(A + "allowBackup") != "false":
        wrong.append("the records may go to a cloud")
    for part in application.findall("activity") + application.findall("provider"):
        name = part.get(A + "name")
        if not os.path.exists(os.path.join(sources, name.rsplit(".", 1)[1] + ".java")):
            wrong.append(f"{name} has no class in src/")
        if part.tag == "activity" and part.get(A + "screenOrientation") not in (None, "unspecified"):
            wrong.append("the glass may not turn as its owner likes")
        if part.tag == "provider" and part.get(A + "exported") != "false":
            wrong.append(f"{name} is open to every app")
    provider = application.find("provider")
    with open(os.path.join(sources, "SharedFiles.java"), encoding="utf-8") as file:
        if f'AUTHORITY = "{provider.get(A + "authorities")}"' not in file.read():
            wrong.append("SharedFiles.java and the manifest name different authorities")
    return wrong + file_filters(application)


def file_filters(application):
    """Whether Android would offer Halfcup for a file, by its rules for intent filters (developer.android.com)."""
    def offered(action, path, kind):
        for one in application.iter("intent-filter"):
            data = [d.attrib for d in one.findall("data")]
            kinds, patterns = ({d[A + k] for d in data if A + k in d} for k in ("mimeType", "pathPattern"))
            if not {f"android.intent.action.{action}"} <= {a.get(A + "name") for a in one.findall("action")}:
                continue
            if any(A + "scheme" in d for d in data) != (action == "VIEW"):
                continue  # what is sent has no address, and a filter with a scheme wants one
            # Android's own patterns: ".*" runs to the first place where the next letter stands, and never tries another.
            if kinds & {kind, "*/*"} and (not patterns or any(simple_match(p, path) for p in patterns)):
                return True
        return False
    wrong = []
    for action, path, kind, wanted in (
            ("VIEW", "/records.halfcup", "text/plain", True),
            ("VIEW", "/a.b/2026.06.records.halfcup", "text/plain", False),  # more dots than are counted out
            ("VIEW", "/my.phone/records.halfcup", "text/plain", True),
            ("VIEW", "/document/17", "application/octet-stream", True),
            ("VIEW", "/document/17", "application/x-halfcup-exchange", True),
            ("VIEW", "/document/17", "image/png", False),
            ("VIEW", "/picture.png", "image/png", False),
            ("SEND", "", "application/x-halfcup-exchange", True),
            ("SEND", "", "image/png", False)):
        if offered(action, path, kind) != wanted:
            wrong.append(f"Halfcup is {'not ' if wanted else ''}offered to {action} {path} ({kind})")
    return wrong


def simple_match(pattern, path):
    """PatternMatcher.PATTERN_SIMPLE_GLOB for the patterns used here: ".*" and an escaped dot."""
    parts = [p.replace("\\\\.", ".").replace("\\.", ".") for p in pattern.split(".*")]
    if not path.startswith(parts[0]):
        return False
    at = len(parts[0])
    for number, part in enumerate(parts[1:], start=1):
        found = path.find(part[:1], at)
        if found < 0 or not path.startswith(part, found):
            return False
        at = found + len(part)
        if number == len(parts) - 1:
            return at == len(path)
    return at == len(path)


def words(folder):
    def strings(name):
        if not os.path.exists(os.path.join(folder, "res", name, "strings.xml")):
            return {}
        return {s.get("name"): s.text or "" for s in ET.parse(os.path.join(folder, "res", name, "strings.xml")).getroot()
                if s.tag == "string" and s.get("translatable") != "false"}
    english, wrong = strings("values"), []
    for code in ("de", "es", "fr"):
        there = strings(f"values-{code}")
        if set(there) != set(english):
            wrong.append(f"values-{code} has {sorted(there)}, English has {sorted(english)}")
        wrong += [f"'{k}' has no words of its own in {code}" for k in there if there[k].strip() in ("", english.get(k))]
    return wrong


def pictures(folder):
    wrong = []
    for density, dots in DENSITIES.items():
        name = os.path.join("res", f"mipmap-{density}", "icon.png")
        with open(os.path.join(folder, name), "rb") as file:
            head = file.read(24)
        if head[:8] != b"\x89PNG\r\n\x1a\n" or (int.from_bytes(head[16:20], "big"), int.from_bytes(head[20:24], "big")) != (dots, dots):
            wrong.append(f"{name} has not {dots} x {dots} dots")
    return wrong


def spoilt(folder, work):
    wrong = []
    for name, good, bad in SPOILT:
        copy = os.path.join(work, "spoilt")
        shutil.copytree(folder, copy)
        path = os.path.join(copy, name)
        with open(path, encoding="utf-8") as file:
            text = file.read()
        if good not in text:
            wrong.append(f"{name} has no {good} that could be spoilt")
        with open(path, "w", encoding="utf-8") as file:
            file.write(text.replace(good, bad))
        taken, said, _ = link(copy, work, compile_too=name != "AndroidManifest.xml")
        if taken or not said:
            wrong.append(f"{name} with {bad or 'no ' + good} should be refused with a word, but was not")
        shutil.rmtree(copy)
    return wrong


def main():
    folder = os.path.join(sys.argv[1], "platform", "android")
    wrong = manifest_itself(folder) + words(folder) + pictures(folder)
    missing = "" if shutil.which("aapt2") else "aapt2 is not there (Debian's package aapt)"
    missing = missing or ("" if glob.glob(FRAMEWORK) else f"{FRAMEWORK} is not there (Debian's package android-framework-res)")
    if not missing:
        with tempfile.TemporaryDirectory() as work:
            taken, said, package = link(folder, work)
            wrong += seen_by_android(package) if taken else [f"aapt2: {said}"]
            wrong += spoilt(folder, work)
    print("\n".join(wrong) or (f"Skipped: {missing}" if missing else
                               f"aapt2 takes the manifest and the resources, and refuses {len(SPOILT)} spoilt ones."))
    return 1 if wrong else 77 if missing else 0


if __name__ == "__main__":
    sys.exit(main())
