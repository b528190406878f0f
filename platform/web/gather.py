#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""Gathers what a server has to hand out: the program as built, the start page, icons.
usage: gather.py BUILD SITE    BUILD holds halfcup.js and halfcup.wasm; SITE is made anew

Each file but the page, the worker and the manifest gets a hash of its content into its name (start.3f2a....css), so that a
browser may keep it for ever and two versions never mix. A name between two @ in a text file stands for the name that
the file has got. Beside each file that shrinks lies a packed one (NAME.br, where brotli is installed) for servers that send such.
"""

import base64
import hashlib
import json
import pathlib
import re
import shutil
import subprocess
import sys

HERE = pathlib.Path(__file__).resolve().parent
CLONE = HERE.parents[1]
ICONS = {"icon-192.png": CLONE / "platform/android/res/mipmap-xxxhdpi/icon.png",
         "icon-512.png": CLONE / "platform/linux/icons/hicolor/512x512/apps/halfcup.png",
         "icon.svg": CLONE / "assets/icons/halfcup.svg"}
# In this order: a file may name those before it.
WORDS = HERE / "words"
HASHED = ["kept_storage.js", "start.css", "start.js", "manifest.webmanifest"]
TEXTS = {".js", ".css", ".html", ".webmanifest", ".svg"}


def policy(styles=()):
    """The content security policy: this origin alone, no script in the page, WebAssembly may be compiled."""
    parts = {"default-src": "'none'", "script-src": "'self' 'wasm-unsafe-eval'",
             "style-src": " ".join(["'self'", *styles]), "img-src": "'self' blob: data:", "connect-src": "'self'",
             "worker-src": "'self'", "manifest-src": "'self'", "base-uri": "'none'", "form-action": "'none'"}
    return "; ".join(f"{name} {value}" for name, value in parts.items())


def hashed_name(name, content):
    stem, _, ending = name.rpartition(".")
    return f"{stem}.{hashlib.sha256(content).hexdigest()[:16]}.{ending}"


def filled(text, values):
    """The text with each @name@ replaced. A name that is not known is an error, not an empty place."""
    def value(found):
        if found[1] not in values:
            raise KeyError(f"@{found[1]}@ stands for nothing")
        return str(values[found[1]])
    return re.sub(r"@([\w.:-]+)@", value, text)


def pack(path):
    """Writes PATH.br and says how long it is; where brotli is not installed, the file's own length."""
    if shutil.which("brotli") is None:
        return path.stat().st_size
    packed = path.with_name(path.name + ".br")
    subprocess.run(["brotli", "--best", "--force", "--keep", f"--output={packed}", str(path)], check=True)
    if packed.stat().st_size >= path.stat().st_size:
        packed.unlink()
        return path.stat().st_size
    return packed.stat().st_size


def style_hashes(program):
    """The hash of the style sheet that Qt puts into the page by itself, as it stands in the program."""
    begin = program.find(b"\n.qt-screen {")
    if begin < 0:
        raise ValueError("Qt's style sheet is not in the program, or no longer begins with .qt-screen")
    sheet = program[begin:program.index(b"\0", begin)]
    return [f"'sha256-{base64.b64encode(hashlib.sha256(sheet).digest()).decode()}'"]


def gather(build, site):
    shutil.rmtree(site, ignore_errors=True)
    site.mkdir(parents=True)
    values = {}
    wire = 0

    def add(name, content):
        nonlocal wire
        values[name] = hashed_name(name, content)
        path = site / values[name]
        path.write_bytes(content)
        wire += pack(path) if path.suffix in TEXTS | {".wasm"} else len(content)

    program = (build / "halfcup.wasm").read_bytes()
    add("halfcup.wasm", program)
    add("halfcup.js", (build / "halfcup.js").read_bytes())
    values["bytes:halfcup.wasm"] = len(program)
    for name, path in ICONS.items():
        add(name, path.read_bytes())
    words = {path.stem: json.loads(path.read_text(encoding="utf-8")) for path in sorted(WORDS.glob("*.json"))}
    add("words.js", f"const halfcupWords = {json.dumps(words, ensure_ascii=False)};\n".encode())
    for name in HASHED:
        add(name, filled((HERE / "site" / name).read_text(encoding="utf-8"), values).encode())
    page = (HERE / "site" / "index.html").read_text(encoding="utf-8")
    values["wire"] = wire
    values["policy"] = policy(style_hashes(program))
    page = filled(page, values)
    (site / "index.html").write_text(page, encoding="utf-8")
    names = ["./", *(values[name] for name in ["halfcup.wasm", "halfcup.js", "words.js", *ICONS, *HASHED])]
    # The page's own name is "./" whatever is in it, so that its content counts for the version.
    version = hashlib.sha256("\n".join([*names, page]).encode()).hexdigest()[:16]
    worker = filled((HERE / "site" / "worker.js").read_text(encoding="utf-8"),
                    {"version": version, "files": json.dumps(names, indent=2)})
    (site / "worker.js").write_text(worker, encoding="utf-8")
    for name in ("index.html", "worker.js"):
        wire += pack(site / name)
    return version, wire


def main():
    if len(sys.argv) != 3:
        sys.exit(__doc__)
    build, site = map(pathlib.Path, sys.argv[1:])
    if not (build / "halfcup.wasm").exists():
        sys.exit(f"There is no halfcup.wasm in {build}; platform/web/build makes it.")
    version, wire = gather(build, site)
    print(f"gather: version {version}, {len(list(site.iterdir()))} files, {wire / 1e6:.2f} MB over the wire at the first visit")


if __name__ == "__main__":
    main()
