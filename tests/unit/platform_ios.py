#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""What iOS is told about the program, read by Python's plistlib, which is strict.
usage: platform_ios.py SOURCES

Keys and their values: Apple's "Information Property List", "Uniform Type Identifiers" and "Privacy manifest files".
"""

import json
import os
import plistlib
import re
import shutil
import struct
import subprocess
import sys
import tempfile

LANGUAGES = ("en", "de", "es", "fr")
USAGE = "NSLocationWhenInUseUsageDescription"
KIND = "alt.halfcup.exchange"
ID = "alt.halfcup.app"


def read(path):
    """The plist, or a sentence."""
    try:
        with open(path, "rb") as file:
            return plistlib.load(file, fmt=plistlib.FMT_XML)
    except Exception as error:  # plistlib lets errors of many kinds through, those of expat among them
        return f"{os.path.basename(path)}: {error}"


def info(plist):
    wrong = []
    # Each of these sentences lets a part of the phone be used; there is to be the one.
    usages = {k for k in plist if k.endswith("UsageDescription")}
    if usages != {USAGE}:
        wrong.append(f"Info.plist asks for {sorted(usages)}")
    for key in ("NSAppTransportSecurity", "UIBackgroundModes", "NSBonjourServices", "SKAdNetworkItems", "UIRequiredDeviceCapabilities"):
        if key in plist:
            wrong.append(f"Info.plist has {key}: network, background or something required of the phone")
    for key, value in (("CFBundleDevelopmentRegion", "en"), ("CFBundlePackageType", "APPL"), ("CFBundleDisplayName", "Halfcup"),
                       ("LSRequiresIPhoneOS", True), ("LSSupportsOpeningDocumentsInPlace", False), ("UILaunchScreen", {}),
                       ("ITSAppUsesNonExemptEncryption", False), ("UIFileSharingEnabled", True)):
        if plist.get(key) != value:
            wrong.append(f"Info.plist: {key} is {plist.get(key)!r}, not {value!r}")
    if set(plist.get("CFBundleLocalizations", ())) != set(LANGUAGES):
        wrong.append(f"Info.plist speaks {plist.get('CFBundleLocalizations')}")
    turns = {"Portrait", "PortraitUpsideDown", "LandscapeLeft", "LandscapeRight"}
    if {t.replace("UIInterfaceOrientation", "") for t in plist.get("UISupportedInterfaceOrientations", ())} != turns:
        wrong.append("Info.plist does not let the glass turn all four ways")
    return wrong + documents(plist)


def documents(plist):
    kinds = plist.get("CFBundleDocumentTypes", [])
    types = plist.get("UTExportedTypeDeclarations", [])
    if len(kinds) != 1 or len(types) != 1:
        return [f"Info.plist has {len(kinds)} kinds of documents and {len(types)} types of its own, not one of each"]
    kind, own = kinds[0], types[0]
    wrong = []
    if kind.get("LSItemContentTypes") != [KIND] or own.get("UTTypeIdentifier") != KIND or kind.get("LSHandlerRank") != "Owner":
        wrong.append("the kind of document and the type of the app are not the same, or not its own")
    # Only these letters may stand in a type's name, and a type without a parent is offered to nobody.
    if not re.fullmatch(r"[A-Za-z0-9.-]+", own.get("UTTypeIdentifier", "")) or not own.get("UTTypeConformsTo"):
        wrong.append("the type has a name or a parent that iOS does not take")
    tags = own.get("UTTypeTagSpecification", {})
    if tags.get("public.filename-extension") != ["halfcup"] or tags.get("public.mime-type") != ["application/x-halfcup-exchange"]:
        wrong.append(f"the type is known by {tags}")
    return wrong


def filled_in(folder, work):
    """Info.plist as CMake fills it in, with the values of ios.cmake."""
    with open(os.path.join(folder, "ios.cmake"), encoding="utf-8") as file:
        settings = dict(re.findall(r"^\s+(MACOSX_BUNDLE_\w+) (\S+?)\)?$", file.read(), re.M))
    out, script = os.path.join(work, "Info.plist"), os.path.join(work, "fill.cmake")
    values = settings | {"MACOSX_BUNDLE_EXECUTABLE_NAME": "halfcup", "PROJECT_VERSION": "0.1.0"}
    with open(script, "w", encoding="utf-8") as file:
        file.write("".join(f'set({k} "{v}")\n' for k, v in sorted(values.items(), key=lambda kv: kv[0] != "PROJECT_VERSION")))
        file.write(f"configure_file({os.path.join(folder, 'Info.plist')} {out})\n")
    subprocess.run(["cmake", "-P", script], check=True, capture_output=True)
    plist = read(out)
    if isinstance(plist, str):
        return [f"filled in by CMake: {plist}"]
    wanted = {"CFBundleIdentifier": ID, "CFBundleName": "Halfcup", "CFBundleExecutable": "halfcup",
              "CFBundleShortVersionString": "0.1.0", "CFBundleVersion": "0.1.0"}
    return [f"filled in by CMake, {k} is {plist.get(k)!r}, not {v!r}" for k, v in wanted.items() if plist.get(k) != v]


def words(folder, plist):
    """The sentences of each language, in the form "key" = "value"; with comments between."""
    told, wrong = {}, []
    for code in LANGUAGES:
        path = os.path.join(folder, f"{code}.lproj", "InfoPlist.strings")
        if not os.path.exists(path):
            wrong.append(f"{code}.lproj/InfoPlist.strings is missing")
            continue
        with open(path, encoding="utf-8") as file:
            rest = re.sub(r"/\*.*?\*/", "", file.read(), flags=re.S)
        pair = r'"((?:[^"\\]|\\.)*)"\s*=\s*"((?:[^"\\]|\\.)*)"\s*;'
        told[code] = dict(re.findall(pair, rest))
        if re.sub(pair, "", rest).strip():
            wrong.append(f"{code}.lproj/InfoPlist.strings cannot be read at '{re.sub(pair, '', rest).strip()[:40]}'")
    name = plist.get("CFBundleDocumentTypes", [{}])[0].get("CFBundleTypeName")
    for code, there in told.items():
        if set(there) != {USAGE, name} or not all(t.strip() for t in there.values()):
            wrong.append(f"{code}.lproj/InfoPlist.strings has {sorted(there)}, not {sorted([USAGE, str(name)])}")
    english = told.get("en", {})
    if english.get(USAGE) != plist.get(USAGE) or english.get(name) != name:
        wrong.append("en.lproj/InfoPlist.strings and Info.plist say different things")
    for code in set(told) - {"en"}:
        wrong += [f"'{key}' has no words of its own in {code}" for key in told[code] if told[code][key] == english.get(key)]
    return wrong


def privacy(folder):
    plist = read(os.path.join(folder, "PrivacyInfo.xcprivacy"))
    if isinstance(plist, str):
        return [plist]
    nothing = {"NSPrivacyTracking": False, "NSPrivacyTrackingDomains": [], "NSPrivacyCollectedDataTypes": []}
    wrong = [f"PrivacyInfo.xcprivacy: {k} is {plist.get(k)!r}" for k, v in nothing.items() if plist.get(k) != v]
    for part in plist.get("NSPrivacyAccessedAPITypes", []):
        if not part.get("NSPrivacyAccessedAPITypeReasons"):
            wrong.append(f"PrivacyInfo.xcprivacy has no reason for {part.get('NSPrivacyAccessedAPIType')}")
    return wrong


def icon(folder):
    catalogue = os.path.join(folder, "Assets.xcassets", "AppIcon.appiconset")
    wrong = []
    with open(os.path.join(catalogue, "Contents.json"), encoding="utf-8") as file:
        images = json.load(file)["images"]
    for image in images:
        path = os.path.join(catalogue, image["filename"])
        if not os.path.exists(path):
            wrong.append(f"the catalogue names {image['filename']}, which is not there")
            continue
        with open(path, "rb") as file:
            head = file.read(33)
        width, height, bits, colour = struct.unpack(">IIBB", head[16:26])
        # Colour type 2 is RGB (ISO/IEC 15948); iOS refuses an icon that can be seen through.
        if (f"{width}x{height}", bits, colour) != (image["size"], 8, 2):
            wrong.append(f"{image['filename']} is {width}x{height} with colour type {colour}, not {image['size']} with 2")
    return wrong + ([] if images else ["the catalogue names no icon"])


def main():
    folder = os.path.join(sys.argv[1], "platform", "ios")
    plist = read(os.path.join(folder, "Info.plist"))
    if isinstance(plist, str):
        print(plist)
        return 1
    wrong = info(plist) + words(folder, plist) + privacy(folder) + icon(folder)
    skipped = "" if shutil.which("cmake") else "Skipped: cmake is not there to fill in Info.plist"
    if not skipped:
        with tempfile.TemporaryDirectory() as work:
            wrong += filled_in(folder, work)
    print("\n".join(wrong) or skipped or "iOS is told one question, one kind of file, four languages, and no tracking.")
    return 1 if wrong else 77 if skipped else 0


if __name__ == "__main__":
    sys.exit(main())
