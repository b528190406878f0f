#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""pseudo_language.py LANGUAGE.ts OUT.ts: a language that nobody speaks, to see what happens to longer words.

Each text becomes about a third longer, has marks on its letters and stands between brackets, so that a cut one
is seen. The texts are those of a complete language's file; places (%1, %n) and date formats stay.
"""

import re
import sys
import xml.etree.ElementTree as tree

MARKED = str.maketrans("aeiouyAEIOUYcnCN", "àéîöüÿÀÉÎÖÜŸçñÇÑ")
DATE_FORMAT = re.compile(r"^[dMyhmsapAP .,:/'-]+$")


def pseudo(text):
    if DATE_FORMAT.match(text) or not re.search("[a-zA-Z]{2}", text):
        return text
    parts = re.split(r"(%(?:L?\d+|n))", text)
    longer = ""
    for part in parts:
        if part.startswith("%"):
            longer += part
        else:  # every third letter that can be said longer is
            count = 0
            for letter in part:
                longer += letter.translate(MARKED)
                if letter.isalpha():
                    count += 1
                    if count % 3 == 0:
                        longer += letter.lower().translate(MARKED)
    inner = longer.strip()
    return longer.replace(inner, f"[{inner}]", 1) if inner else longer


def main():
    document = tree.parse(sys.argv[1])
    root = document.getroot()
    root.set("language", "en")
    for message in root.iter("message"):
        source = message.findtext("source") or ""
        said = message.find("translation")
        said.attrib.pop("type", None)
        forms = list(said.iter("numerusform"))
        for form in forms:
            form.text = pseudo(source)
        if not forms:
            said.text = pseudo(source)
    with open(sys.argv[2], "w", encoding="utf-8") as out:
        out.write('<?xml version="1.0" encoding="utf-8"?>\n<!DOCTYPE TS>\n')
        out.write(tree.tostring(root, encoding="unicode"))


if __name__ == "__main__":
    main()
