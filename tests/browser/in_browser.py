#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""Serves what platform/web/build made on loopback and lets a script of this folder try it in Debian's Chromium.
usage: in_browser.py BUILD SCRIPT [ARGUMENT...]    BUILD: build/web; SCRIPT: kept_kills.mjs, ...

Exit codes: 0 passed, 1 failed, 77 something that is needed is not there: Chromium, node, playwright-core from npm
(npm install --prefix BUILD/playwright playwright-core), or what was to be built.
"""

import contextlib
import hashlib
import importlib.machinery
import importlib.util
import os
import pathlib
import shutil
import subprocess
import sys
import tempfile
import threading

HERE = pathlib.Path(__file__).resolve().parent
WEB = HERE.parents[1] / "platform/web"
CHROMIUM = os.environ.get("HALFCUP_CHROMIUM", "/usr/bin/chromium")


def skip(sentence):
    print(f"Skipped: {sentence}")
    sys.exit(77)


def served(site, sent=None):
    """The address of a server of platform/web/run for the folder, which ends with this program. Into the file "sent", if
    one is named, goes a line for each content that is sent: bytes and name."""
    loader = importlib.machinery.SourceFileLoader("run", str(WEB / "run"))
    module = importlib.util.module_from_spec(importlib.util.spec_from_loader("run", loader))
    sys.dont_write_bytecode = True
    loader.exec_module(module)
    if sent:
        def told(_, name, size):
            with open(sent, "a", encoding="utf-8") as file:
                file.write(f"{size} {name}\n")
        module.Handler.told = told
    server = module.server(site, 0)
    threading.Thread(target=server.serve_forever, daemon=True).start()
    return f"http://127.0.0.1:{server.server_port}"


def empty_page(build, stack):
    """A folder with the page that the start is held against. Its files have names that a browser may keep for ever."""
    program = build / "app/empty_page.wasm"
    if not program.exists():
        skip("the empty page is not built (platform/web/root in build/web/root /halfcup/platform/web/build-app empty_page)")
    folder = pathlib.Path(stack.enter_context(tempfile.TemporaryDirectory()))
    names = {}
    for path in (program, program.with_suffix(".js"), HERE / "empty_page_start.js"):
        names[path.name] = f"{path.stem}.{hashlib.sha256(path.read_bytes()).hexdigest()[:16]}{path.suffix}"
        shutil.copy(path, folder / names[path.name])
    page = (HERE / "empty_page.html").read_text(encoding="utf-8")
    for name, hashed in names.items():
        page = page.replace(f"@{name}@", hashed)
    (folder / "index.html").write_text(page, encoding="utf-8")
    return folder


def main():
    if len(sys.argv) < 3:
        sys.exit(__doc__)
    build, script, arguments = pathlib.Path(sys.argv[1]), sys.argv[2], sys.argv[3:]
    playwright = build / "playwright"
    if not os.access(CHROMIUM, os.X_OK):
        skip("Chromium is not there (Debian's package chromium)")
    if shutil.which("node") is None or not (playwright / "node_modules/playwright-core").is_dir():
        skip("node or playwright-core is not there (npm install --prefix build/web/playwright playwright-core)")
    with contextlib.ExitStack() as stack:
        folder = stack.enter_context(tempfile.TemporaryDirectory())
        site = pathlib.Path(folder)
        if script.startswith("kept_"):
            if not (build / "probe/probe.wasm").exists():
                skip("tests/browser/build-probe has not made the small program")
            for path in (WEB / "site/kept_storage.js", HERE / "kept_probe.html", HERE / "kept_probe.js",
                         build / "probe/probe.js", build / "probe/probe.wasm"):
                shutil.copy(path, site)
        else:
            if not (build / "site/index.html").exists():
                skip("platform/web/build has not made the program")
            # A copy, in which a script puts a new version.
            shutil.copytree(build / "site", site, dirs_exist_ok=True)
        sent = pathlib.Path(folder + ".sent")
        environment = dict(os.environ, HALFCUP_PLAYWRIGHT=str(playwright.resolve()), HALFCUP_CHROMIUM=CHROMIUM,
                           HALFCUP_SITE=str(site), HALFCUP_SENT=str(sent))
        addresses = [served(site, sent)]
        if script == "start.mjs":
            addresses.append(served(empty_page(build, stack)))
        ended = subprocess.run(["node", str(HERE / script), *addresses, *arguments], env=environment, check=False)
        sent.unlink(missing_ok=True)
    sys.exit(ended.returncode)


if __name__ == "__main__":
    main()
