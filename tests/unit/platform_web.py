#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""The files round the browser's program: gathered from an empty stand-in for the program, and served. usage: platform_web.py SOURCE"""

import base64
import hashlib
import html.parser
import importlib.machinery
import importlib.util
import json
import pathlib
import re
import shutil
import struct
import subprocess
import sys
import tempfile
import threading
import unittest
import unittest.mock
import urllib.error
import urllib.request

WEB = pathlib.Path(sys.argv.pop(1)) / "platform/web"


def load(name):
    """A Python program as a module, whatever its name ends in."""
    loader = importlib.machinery.SourceFileLoader(name.replace(".", "_"), str(WEB / name))
    module = importlib.util.module_from_spec(importlib.util.spec_from_loader(loader.name, loader))
    loader.exec_module(module)
    return module


sys.dont_write_bytecode = True
gather = load("gather.py")
run = load("run")


class Page(html.parser.HTMLParser):
    """What a page asks for and what it has in itself."""

    def __init__(self, text):
        super().__init__()
        self.asked, self.inline, self.policy, self.open = [], [], "", ""
        self.feed(text)

    def handle_starttag(self, tag, attrs):
        given = dict(attrs)
        self.open = tag
        self.inline += [f"{tag} {name}" for name in given if name.startswith("on") or name == "style"]
        self.asked += [given[name] for name in ("src", "href", "data-program") if name in given]
        if given.get("http-equiv") == "Content-Security-Policy":
            self.policy = given["content"]

    def handle_endtag(self, tag):
        self.open = ""

    def handle_data(self, data):
        if self.open in ("script", "style") and data.strip():
            self.inline.append(f"{self.open}: {data.strip()}")


QT_STYLES = b"\n.qt-screen {\n    overflow: hidden;\n}\n"  # Qt's own sheet stands so in the program


class Gathered(unittest.TestCase):
    def setUp(self):
        self.folder = pathlib.Path(tempfile.mkdtemp())
        self.addCleanup(shutil.rmtree, self.folder)
        (self.folder / "build").mkdir()
        self.site = self.folder / "site"
        self.version, self.wire = self.gathered(b"\0asm one")
        self.page = Page((self.site / "index.html").read_text(encoding="utf-8"))

    def gathered(self, program):
        (self.folder / "build/halfcup.wasm").write_bytes(program + QT_STYLES + b"\0more")
        (self.folder / "build/halfcup.js").write_text("var halfcup_entry = 1;\n", encoding="utf-8")
        return gather.gather(self.folder / "build", self.site)

    def listed(self):
        """The names in the worker's list."""
        worker = (self.site / "worker.js").read_text(encoding="utf-8")
        return json.loads(re.search(r"const files = (\[.*?\]);", worker, re.S)[1])

    def test_every_file_that_is_asked_for_is_there(self):
        manifest = next(self.site.glob("manifest.*.webmanifest"))
        icons = [icon["src"] for icon in json.loads(manifest.read_text(encoding="utf-8"))["icons"]]
        self.assertGreater(len(self.page.asked), 8)
        for name in self.page.asked + icons:
            self.assertTrue((self.site / name).is_file(), name)

    def test_the_page_has_no_script_and_no_style_in_itself(self):
        self.assertEqual(self.page.inline, [])

    def test_the_policy_lets_in_nothing_from_elsewhere_and_nothing_made_of_strings(self):
        self.assertIn("default-src 'none'", self.page.policy)
        self.assertIn("script-src 'self' 'wasm-unsafe-eval';", self.page.policy + ";")
        sheet = base64.b64encode(hashlib.sha256(QT_STYLES).digest()).decode()
        self.assertIn(f"style-src 'self' 'sha256-{sheet}'", self.page.policy)
        for word in ("'unsafe-inline'", "'unsafe-eval'", "*", "http:", "https:"):
            self.assertNotIn(word, self.page.policy)

    def test_nothing_names_another_server(self):
        for path in self.site.iterdir():
            if path.suffix in gather.TEXTS:
                text = path.read_text(encoding="utf-8").replace("http://www.w3.org/2000/svg", "")
                self.assertIsNone(re.search(r"https?://", text), path.name)

    def test_the_worker_lists_everything_but_itself_once(self):
        listed = self.listed()
        there = {path.name for path in self.site.iterdir() if path.suffix != ".br"} - {"worker.js", "index.html"}
        self.assertEqual(len(listed), len(set(listed)))
        self.assertEqual(set(listed), there | {"./"})

    def test_another_program_is_another_version_and_only_its_names_change(self):
        before = set(self.listed())
        version, _ = self.gathered(b"\0asm two")
        self.assertNotEqual(version, self.version)
        changed = {name.split(".")[0] for name in before ^ set(self.listed())}
        self.assertEqual(changed, {"halfcup"})

    def test_the_same_program_is_the_same_version(self):
        self.assertEqual(self.gathered(b"\0asm one")[0], self.version)

    def test_a_name_that_stands_for_nothing_is_an_error(self):
        with self.assertRaises(KeyError):
            gather.filled("<img src='@nothing.png@'>", {"something.png": "x"})

    def test_icons_have_the_size_that_the_manifest_says(self):
        manifest = json.loads(next(self.site.glob("manifest.*.webmanifest")).read_text(encoding="utf-8"))
        sizes = {icon["sizes"]: self.site / icon["src"] for icon in manifest["icons"] if icon["type"] == "image/png"}
        self.assertEqual(set(sizes), {"192x192", "512x512"})  # what browsers ask for before they offer to install
        for size, path in sizes.items():
            self.assertEqual("%dx%d" % struct.unpack(">II", path.read_bytes()[16:24]), size)

    def test_javascript_can_be_read(self):
        if shutil.which("node") is None:
            self.skipTest("node is not there to read it")
        for path in self.site.glob("*.js"):
            got = subprocess.run(["node", "--check", str(path)], capture_output=True, text=True, check=False)
            self.assertEqual(got.returncode, 0, got.stderr)


class Words(unittest.TestCase):
    def test_every_language_says_everything_that_the_page_may_say(self):
        words = {path.stem: json.loads(path.read_text(encoding="utf-8")) for path in (WEB / "words").glob("*.json")}
        self.assertEqual(set(words), {"de", "en", "es", "fr"})
        said = set(re.findall(r"\bwords\.(\w+)", (WEB / "site/start.js").read_text(encoding="utf-8")))
        for language, sentences in words.items():
            self.assertEqual(set(sentences), said, language)
            self.assertTrue(all(sentences.values()), language)
            self.assertEqual(sentences["size"].count("%1"), 1, language)


class Served(unittest.TestCase):
    def setUp(self):
        folder = pathlib.Path(tempfile.mkdtemp())
        self.addCleanup(shutil.rmtree, folder)
        site = folder / "site"
        site.mkdir()
        (site / "index.html").write_text("page", encoding="utf-8")
        (site / "a.0123456789abcdef.wasm").write_bytes(b"plain")
        (site / "a.0123456789abcdef.wasm.br").write_bytes(b"packed")
        (folder / "secret.html").write_text("not ours to show", encoding="utf-8")
        self.server = run.server(site, 0)
        threading.Thread(target=self.server.serve_forever, daemon=True).start()
        self.addCleanup(self.server.server_close)
        self.addCleanup(self.server.shutdown)

    def get(self, path, **headers):
        request = urllib.request.Request(f"http://127.0.0.1:{self.server.server_port}{path}", headers=headers)
        with urllib.request.urlopen(request, timeout=10) as answer:
            return answer.headers, answer.read()

    def test_on_loopback_alone(self):
        self.assertEqual(self.server.server_address[0], "127.0.0.1")

    def test_the_page_is_asked_for_anew_and_hashed_names_never(self):
        headers, body = self.get("/")
        self.assertEqual((body, headers["Cache-Control"]), (b"page", "no-cache"))
        self.assertIn("immutable", self.get("/a.0123456789abcdef.wasm")[0]["Cache-Control"])

    def test_what_is_there_already_is_not_sent_again(self):
        tag = self.get("/")[0]["ETag"]
        told = []
        with unittest.mock.patch.object(run.Handler, "told", lambda _, *what: told.append(what)):
            with self.assertRaises(urllib.error.HTTPError) as same:
                self.get("/", **{"If-None-Match": tag})
            self.assertEqual((same.exception.code, same.exception.read(), told), (304, b"", []))
            self.assertEqual(self.get("/", **{"If-None-Match": '"another"'})[1], b"page")
            self.assertEqual(told, [("index.html", 4)])

    def test_packed_for_those_who_can_unpack(self):
        headers, body = self.get("/a.0123456789abcdef.wasm", **{"Accept-Encoding": "gzip, br"})
        self.assertEqual((body, headers["Content-Encoding"], headers["Content-Type"]), (b"packed", "br", "application/wasm"))
        headers, body = self.get("/a.0123456789abcdef.wasm")
        self.assertEqual((body, headers["Content-Encoding"]), (b"plain", None))

    def test_what_a_page_cannot_say_of_itself(self):
        headers, _ = self.get("/")
        for name, value in run.HEADERS.items():
            self.assertEqual(headers[name], value)

    def test_nothing_outside_the_folder(self):
        for path in ("/../secret.html", "/%2e%2e/secret.html", "//secret.html", "/.hidden.html", "/a.0123456789abcdef.wasm.br", "/no.html"):
            with self.assertRaises(urllib.error.HTTPError) as refused:
                self.get(path)
            self.assertEqual(refused.exception.code, 404, path)


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
