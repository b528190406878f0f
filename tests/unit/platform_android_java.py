#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""The Java side of Android, as far as the tools at hand reach.
usage: platform_android_java.py SOURCES

With a JDK: each class is read, and what needs no Android (the names of files from other apps) is tried. With an
android.jar too (HALFCUP_ANDROID_JAR, or a platform of ANDROID_HOME or ANDROID_SDK_ROOT) all is compiled against it.
Without one the test is skipped, with a sentence: it has not said that the classes compile.
"""

import glob
import os
import shutil
import subprocess
import sys
import tempfile

# What a name from outside becomes: from "../" paths to control characters. No source: what a folder of ours must not meet.
NAMES = (("wash.halfcup", "wash.halfcup"), ("2026-06 Hang.halfcup", "2026-06 Hang.halfcup"), ("../../databases/halfcup.db", "_.._databases_halfcup.db"),
         ("/etc/passwd", "_etc_passwd"), ("a\\b.csv", "a_b.csv"), ("..", "file"), ("", "file"), (" .hidden", "hidden"),
         ("a\nb\tc.csv", "a_b_c.csv"), ("Völker äöü.csv", "Völker äöü.csv"), ("x" * 200 + ".halfcup", "x" * 92 + ".halfcup"),
         ("." * 99 + "a", "a"), ("wash.halfcup  ", "wash.halfcup"))
TRY = """package alt.halfcup.app;
public final class Try {
    public static void main(String[] names) {
        StringBuilder out = new StringBuilder(SafeName.of(null)).append((char) 1);
        for (String name : names)
            out.append(SafeName.of(name)).append((char) 1).append(SafeName.of(SafeName.of(name))).append((char) 1);
        byte[] bytes = out.toString().getBytes(java.nio.charset.StandardCharsets.UTF_8);
        System.out.write(bytes, 0, bytes.length);
        System.out.flush();
    }
}
"""
# Qt's activity and the class of resource numbers come with a build; of both, only this much is used.
STAND_INS = {"org/qtproject/qt/android/bindings/QtActivity.java":
             "package org.qtproject.qt.android.bindings;\npublic class QtActivity extends android.app.Activity {\n"
             "    @Override public void onCreate(android.os.Bundle state) { super.onCreate(state); }\n}\n",
             "alt/halfcup/app/R.java":
             "package alt.halfcup.app;\npublic final class R {\n    public static final class string {\n"
             "        public static final int hand_on = 1;\n    }\n}\n"}


def javac(*arguments):
    got = subprocess.run(["javac", "-proc:none", "-encoding", "UTF-8", *arguments], capture_output=True, text=True, check=False)
    return "" if got.returncode == 0 else (got.stdout + got.stderr).strip()


def android_jar():
    found = [os.environ.get("HALFCUP_ANDROID_JAR", "")]
    for home in (os.environ.get("ANDROID_HOME"), os.environ.get("ANDROID_SDK_ROOT"), "/usr/lib/android-sdk"):
        found += sorted(glob.glob(os.path.join(home, "platforms", "android-*", "android.jar")), reverse=True) if home else []
    return next((f for f in found if f and os.path.exists(f)), None)


def names(folder, work):
    with open(os.path.join(work, "Try.java"), "w", encoding="utf-8") as file:
        file.write(TRY)
    said = javac("--release", "8", "-Xlint:-options", "-d", work, os.path.join(work, "Try.java"), os.path.join(folder, "SafeName.java"))
    if said:
        return [said]
    got = subprocess.run(["java", "-Dsun.jnu.encoding=UTF-8", "-Dfile.encoding=UTF-8", "-cp", work, "alt.halfcup.app.Try",
                          *(n for n, _ in NAMES)], capture_output=True, check=False)
    out = got.stdout.decode("utf-8", "replace").split("\1")
    if got.returncode or len(out) != 2 * len(NAMES) + 2:
        return [f"java: {got.stderr.decode(errors='replace')}"]
    wrong = [] if out[0] == "file" else [f"no name becomes '{out[0]}'"]
    for (name, wanted), once, twice in zip(NAMES, out[1::2], out[2::2]):
        if (once, twice) != (wanted, wanted):
            wrong.append(f"{name!r} becomes {once!r} and then {twice!r}, not {wanted!r}")
    return wrong


def main():
    folder = os.path.join(sys.argv[1], "platform", "android", "src", "alt", "halfcup", "app")
    classes = sorted(glob.glob(os.path.join(folder, "*.java")))
    if not classes:
        print("there are no classes in platform/android/src")
        return 1
    if not shutil.which("javac") or not shutil.which("java"):
        print("Skipped: there is no JDK (Debian's package default-jdk-headless)")
        return 77
    jar = android_jar()
    with tempfile.TemporaryDirectory() as work:
        said = javac("-XDshould-stop.ifNoError=PARSE", "-d", work, *classes)
        wrong = [said] if said else []
        wrong += names(folder, work) if not wrong else []
        if jar and not wrong:
            for name, text in STAND_INS.items():
                os.makedirs(os.path.dirname(os.path.join(work, name)), exist_ok=True)
                with open(os.path.join(work, name), "w", encoding="utf-8") as file:
                    file.write(text)
            said = javac("--release", "8", "-Xlint:-options", "-cp", jar, "-d", work, *classes,
                         *(os.path.join(work, n) for n in STAND_INS))
            wrong += [said] if said else []
    print("\n".join(wrong) or (f"{len(classes)} classes compile against {jar}." if jar else
                               f"Skipped: {len(classes)} classes were read, and names of files tried, but there is no android.jar "
                               "to compile them against (HALFCUP_ANDROID_JAR, ANDROID_HOME)"))
    return 1 if wrong else 0 if jar else 77


if __name__ == "__main__":
    sys.exit(main())
