# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""Arrows point down only: the table of cpp/layers.cmake, every #include and every link list."""

import re

from tree import CPP, lines, without_comments

# The design in one line: a layer may lean on any with a smaller number. Kept here besides the table, so that a
# wrong table is seen too.
HEIGHT = {"mites": 0, "records": 1, "handbook": 1, "pictures": 2, "season": 2, "store": 2, "place": 2, "device": 2,
          "exchange": 3, "touch": 4, "desk": 4}


def read_table(text):
    """Each layer's name -> the layers it may link."""
    text = re.sub(r"#[^\n]*", "", text)
    layers = re.search(r"set\(HALFCUP_LAYERS\s+([^)]*)\)", text)
    table = {name: set() for name in layers[1].split()} if layers else {}
    for name, value in re.findall(r"set\(HALFCUP_MAY_LINK_(\w+)\s+([^)]*)\)", text):
        table.setdefault(name, set()).update(v for v in value.split() if v != '""')
    return table


def layers(tree):
    table = read_table(tree.text("cpp/layers.cmake")) if tree.has("cpp/layers.cmake") else {}
    if not table:
        tree.complain("cpp/layers.cmake", 0, "the table of layers is not there.")
        return
    for name, below in table.items():
        if name not in HEIGHT:
            tree.complain("cpp/layers.cmake", 0, f"layer {name} is not in the design.")
            continue
        for other in sorted(below):
            if HEIGHT.get(other, 99) >= HEIGHT[name]:
                tree.complain("cpp/layers.cmake", 0, f"the table lets {name} link {other}: that arrow does not point down.")
    for name in tree.files("cpp", ends=CPP):
        _includes(tree, name, table)
    for name in tree.files("cpp", ends=("CMakeLists.txt", ".cmake")):
        _links(tree, name, table)


def _includes(tree, name, table):
    layer = name.split("/")[1]
    for number, line in lines(without_comments(tree.text(name))):
        found = re.match(r'\s*#\s*include\s*(["<])([^">]+)[">]', line)
        if not found:
            continue
        quote, header = found.groups()
        first = header.split("/")[0]
        if layer == "mites" and re.match(r"Qt?[A-Z]", first):
            tree.complain(name, number, f"mites is C++ and Boost.Math only, but this includes <{header}>.")
        if header.startswith("..") or "/../" in header:
            tree.complain(name, number, f'"{header}" walks past the layers; write "layer/header.h".')
        elif first in table and layer in table:
            if first != layer and first not in table[layer]:
                tree.complain(name, number, f"cpp/{layer} may not reach up or across to {first} (cpp/layers.cmake).")
        elif quote == '"' and layer in table and not header.endswith(".moc"):
            tree.complain(name, number, f'write "{layer}/{header}" (or <{header}> for a library), not "{header}".')


def _links(tree, name, table):
    text = re.sub(r"#[^\n]*", lambda m: "", tree.text(name))
    for call in re.finditer(r"\bhalfcup_layer\s*\(([^)]*)\)", text):
        words = call[1].split()
        if not words or words[0].startswith("$") or "name" == words[0]:
            continue
        layer, part = words[0], ""
        number = text.count("\n", 0, call.start()) + 1
        for word in words[1:]:
            if word in ("LAYERS", "SOURCES", "LIBRARIES"):
                part = word
            elif part == "LAYERS" and word not in table.get(layer, ()):
                tree.complain(name, number, f"{layer} may not link {word} (cpp/layers.cmake).")
            elif part == "LIBRARIES" and layer == "mites" and re.match(r"Qt\d?::", word):
                tree.complain(name, number, f"mites may not link {word}: it is to work without Qt.")
            elif part == "LIBRARIES" and word.startswith(("Halfcup::", "halfcup_")):
                tree.complain(name, number, f"{layer} links {word} among the libraries; layers belong under LAYERS.")
    for call in re.finditer(r"\btarget_link_libraries\s*\(\s*halfcup_(\w+)([^)]*)\)", text):
        number = text.count("\n", 0, call.start()) + 1
        for word in re.findall(r"(?:Halfcup::|halfcup_)(\w+)", call[2]):
            if call[1] in table and word in table and word not in table[call[1]]:
                tree.complain(name, number, f"{call[1]} may not link {word} (cpp/layers.cmake).")
