#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""Holds the pictures (*.png) in and below two folders against each other: compare.py FOLDER FOLDER.

Two pictures are equal but for antialiasing when, of their pixels,
  - at most SHARE differ in some channel by more than TOLERANCE of 255, and
  - no block of BLOCK x BLOCK pixels differs so in more than half of them.
The first says how much may differ, the second that it may only be edges: an edge of a letter or a line is a pixel or two
wide, and a letter, an icon or a line that is missing or elsewhere fills blocks. Why these figures: README.md beside this file.
Exit code 0 when the same names are in both folders and all are equal, 1 when not, 2 for a wrong call.
"""

import pathlib
import struct
import sys
import zlib

TOLERANCE = 32
SHARE = 0.001
BLOCK = 4


def unfiltered(data, width, height, size):
    """The rows of a PNG without its filters (PNG specification, third edition, clause 9)."""
    stride = width * size
    if len(data) < (stride + 1) * height:
        raise ValueError("is cut short")
    above = bytearray(stride)
    for y in range(height):
        start = y * (stride + 1)
        kind, row = data[start], bytearray(data[start + 1:start + 1 + stride])
        if kind == 1:
            for i in range(size, stride):
                row[i] = (row[i] + row[i - size]) & 255
        elif kind == 2:
            row = bytearray((a + b) & 255 for a, b in zip(row, above))
        elif kind == 3:
            for i in range(stride):
                left = row[i - size] if i >= size else 0
                row[i] = (row[i] + (left + above[i]) // 2) & 255
        elif kind == 4:
            for i in range(stride):
                a, b, c = (row[i - size], above[i], above[i - size]) if i >= size else (0, above[i], 0)
                pa, pb, pc = abs(b - c), abs(a - c), abs(a + b - 2 * c)
                row[i] = (row[i] + (a if pa <= pb and pa <= pc else b if pb <= pc else c)) & 255
        elif kind != 0:
            raise ValueError(f"has an unknown filter ({kind})")
        above = row
        yield row


def read_png(path):
    """(width, height, bytes a pixel, rows) of a PNG with 8 bits a channel, as Qt writes them."""
    data = path.read_bytes()
    if data[:8] != b"\x89PNG\r\n\x1a\n":
        raise ValueError("is no PNG")
    place, packed, head = 8, b"", None
    while place + 8 <= len(data):
        length, kind = struct.unpack(">I4s", data[place:place + 8])
        body = data[place + 8:place + 8 + length]
        if kind == b"IHDR":
            head = struct.unpack(">IIBBBBB", body)
        elif kind == b"IDAT":
            packed += body
        place += length + 12
    if head is None:
        raise ValueError("has no head")
    width, height, depth, colour, _, _, interlaced = head
    if depth != 8 or colour not in (0, 2, 6) or interlaced:
        raise ValueError("is a kind of PNG that this program does not read")
    size = {0: 1, 2: 3, 6: 4}[colour]
    return width, height, size, list(unfiltered(zlib.decompress(packed), width, height, size))


def difference(one, two):
    """(differing pixels, all pixels, most in one block, greatest step) of two pictures of one size."""
    width, height, size, rows = one
    if two[:3] != one[:3]:
        raise ValueError(f"has another size or kind: {one[:3]} and {two[:3]}")
    count, greatest, blocks = 0, 0, {}
    for y, (a, b) in enumerate(zip(rows, two[3])):
        if a == b:
            continue
        for x in range(width):
            step = max(abs(a[x * size + i] - b[x * size + i]) for i in range(size))
            greatest = max(greatest, step)
            if step > TOLERANCE:
                count += 1
                block = (x // BLOCK, y // BLOCK)
                blocks[block] = blocks.get(block, 0) + 1
    return count, width * height, max(blocks.values(), default=0), greatest


def main(arguments):
    if len(arguments) != 2 or not all(pathlib.Path(a).is_dir() for a in arguments):
        print("usage: compare.py FOLDER FOLDER", file=sys.stderr)
        return 2
    here, there = (pathlib.Path(a) for a in arguments)
    names = [sorted(str(p.relative_to(folder)) for p in folder.rglob("*.png")) for folder in (here, there)]
    bad = [f"{name}: is in one folder only" for name in sorted(set(names[0]) ^ set(names[1]))]
    if not names[0] and not names[1]:
        bad.append("there was nothing to compare.")
    same, worst = 0, (0.0, 0, "none")
    both = sorted(set(names[0]) & set(names[1]))
    for name in both:
        try:
            one, two = read_png(here / name), read_png(there / name)
            if one == two:
                same += 1
                continue
            count, pixels, block, greatest = difference(one, two)
        except (ValueError, zlib.error, struct.error) as error:
            bad.append(f"{name}: {error}")
            continue
        worst = max(worst, (count / pixels, greatest, name))
        if count > SHARE * pixels or block > BLOCK * BLOCK // 2:
            bad.append(f"{name}: {count} of {pixels} pixels differ by more than {TOLERANCE}, up to {block} in a block of {BLOCK * BLOCK}")
        else:
            print(f"{name}: {count} of {pixels} pixels beyond {TOLERANCE}, the greatest step {greatest}: edges alone")
    for sentence in bad:
        print(sentence)
    print(f"compare: {len(both)} pictures, {same} the same in every pixel, {len(bad)} complaints; "
          f"the largest share {100 * worst[0]:.4f} % ({worst[2]})")
    return 1 if bad else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
