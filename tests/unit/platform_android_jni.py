#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""The C++ side of Android, as far as it can be judged without an NDK.
usage: platform_android_jni.py SOURCES COMPILER QT-HEADERS

- Each file of cpp/device/android is read by the compiler as if it built for Android (__ANDROID__), with Qt's own headers and the
  jni.h of a JDK, which the JNI specification makes the same everywhere. Nothing is linked. Without a jni.h: skipped, with a sentence.
- Each call from C++ to Java, and each native method, is looked up in the .java file by name and by signature: a wrong one would
  only be found on a phone. Signatures: Java Native Interface Specification, chapter 3, "Type Signatures".
"""

import glob
import os
import re
import shutil
import subprocess
import sys
import tempfile

LETTERS = {"void": "V", "boolean": "Z", "int": "I", "long": "J", "float": "F", "double": "D", "String": "Ljava/lang/String;",
           "Activity": "Landroid/app/Activity;", "Context": "Landroid/content/Context;"}


def jni_headers():
    homes = [os.environ.get("JAVA_HOME", "")]
    if shutil.which("javac"):
        homes.append(os.path.dirname(os.path.dirname(os.path.realpath(shutil.which("javac")))))
    homes += sorted(glob.glob("/usr/lib/jvm/*"))
    return next((os.path.join(h, "include") for h in homes if h and os.path.exists(os.path.join(h, "include", "jni.h"))), None)


def read(path):
    with open(path, encoding="utf-8") as file:
        return file.read()


def java_methods(folder):
    """{class: {(name, signature, native)}} of the static methods."""
    found = {}
    for path in glob.glob(os.path.join(folder, "*.java")):
        methods = set()
        for native, kind, name, parameters in re.findall(r"static (native )?(\w+) (\w+)\(([^)]*)\)", read(path)):
            types = [p.replace("final ", "").split()[0] for p in parameters.split(",") if p.strip()]
            if all(t in LETTERS for t in [*types, kind]):
                methods.add((name, "(" + "".join(LETTERS[t] for t in types) + ")" + LETTERS[kind], bool(native)))
        found["alt/halfcup/app/" + os.path.basename(path)[:-5]] = methods
    return found


def signatures(cpp, java):
    wrong, seen = [], set()
    names = dict(re.findall(r"(k\w+) = \"([\w/]+)\";", read(os.path.join(cpp, "java.h"))))
    for path in sorted(glob.glob(os.path.join(cpp, "*.cpp"))):
        text = read(path)
        calls = [(c, m, s, False) for c, m, s in
                 re.findall(r"callStatic(?:Object)?Method(?:<\w+>)?\(\s*java::(k\w+),\s*\"(\w+)\",\s*\"([^\"]+)\"", text)]
        for constant, block in re.findall(r"registerNativeMethods\(java::(k\w+),\s*\{(.*?)\}\);", text, re.S):
            calls += [(constant, m, s, True) for m, s in re.findall(r"method\(\"(\w+)\",\s*\"([^\"]+)\"", block)]
        for constant, method, signature, native in calls:
            owner = names.get(constant)
            seen.add((owner, method, signature, native))
            if (method, signature, native) not in java.get(owner, set()):
                wrong.append(f"{os.path.basename(path)}: {owner} has no {'native ' if native else ''}{method}{signature}")
    for owner, methods in java.items():
        wrong += [f"{owner}.{name}{signature} is native, but C++ does not register it"
                  for name, signature, native in methods if native and (owner, name, signature, True) not in seen]
    return wrong + ([] if len(seen) >= 12 else [f"only {len(seen)} calls were found: the pattern has grown old"])


def compiles(sources, compiler, qt, jni):
    wrong = []
    with tempfile.TemporaryDirectory() as door:
        os.symlink(os.path.join(sources, "cpp", "device"), os.path.join(door, "device"))
        files = sorted(glob.glob(os.path.join(sources, "cpp", "device", "android", "*.cpp")))
        for path in files:
            got = subprocess.run([compiler, "-std=c++20", "-fsyntax-only", "-Wall", "-Wextra", "-Wpedantic", "-Wshadow", "-Werror", "-fPIC",
                                  "-D__ANDROID__", f"-I{door}", "-isystem", jni, "-isystem", os.path.join(jni, "linux"),
                                  *(a for f in ("", "QtCore", "QtGui") for a in ("-isystem", os.path.join(qt, f))), path],
                                 capture_output=True, text=True, check=False)
            if got.returncode:
                wrong.append(got.stderr.strip())
    return wrong + ([] if files else ["there is nothing in cpp/device/android"])


def main():
    sources, compiler, qt = os.path.abspath(sys.argv[1]), *sys.argv[2:]
    java = java_methods(os.path.join(sources, "platform", "android", "src", "alt", "halfcup", "app"))
    wrong = signatures(os.path.join(sources, "cpp", "device", "android"), java)
    jni = jni_headers()
    if jni:
        wrong += compiles(sources, compiler, qt, jni)
    print("\n".join(wrong) or ("C++ and Java name the same methods, and the C++ of Android is sound for the compiler." if jni else
                               "Skipped: C++ and Java name the same methods, but there is no jni.h to compile against "
                               "(Debian's package default-jdk-headless)"))
    return 1 if wrong else 0 if jni else 77


if __name__ == "__main__":
    sys.exit(main())
