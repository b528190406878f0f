#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""Makes the icons of every platform from the drawings in this folder.
usage: make.py           draws them anew (needs rsvg-convert, Debian's package librsvg2-bin)
       make.py --check   says which of them are not what the drawings give; 77 where rsvg-convert is not there

The pictures are kept beside their platforms, so that a build needs no drawing program. Another version of the
drawing program may shade an edge a little otherwise, so the check compares what is seen and not the bytes.
"""

import pathlib
import shutil
import struct
import subprocess
import sys
import zlib

HERE = pathlib.Path(__file__).resolve().parent
PLATFORM = HERE.parents[1] / "platform"
# The edge of the blue field is round in the drawing; phones cut their own.
ROUND, SQUARE = 'height="256" rx="56"', 'height="256" rx="0"'
# An edge that is shaded otherwise changes its dots a little; a shape that has moved changes some of them altogether.
# One cell of the comb moved by a sixtieth of the picture: three in a thousand.
MUCH, MOST_MUCH_CHANGED = 64, 0.001


def wanted():
    """(drawing, dots, square and without transparency, file) of each picture."""
    linux = PLATFORM / "linux" / "icons" / "hicolor"
    for dots in (16, 24, 32, 48, 64, 128, 256, 512):
        drawing = "halfcup-small" if dots <= 32 else "halfcup"
        yield drawing, dots, False, linux / f"{dots}x{dots}" / "apps" / "halfcup.png"
    for dots in (32, 48, 128):
        yield ("halfcup-exchange", dots, False,
               linux / f"{dots}x{dots}" / "mimetypes" / "application-x-halfcup-exchange.png")
    # 48 units of Android's at each density: developer.android.com, "Support different pixel densities".
    for density, dots in (("mdpi", 48), ("hdpi", 72), ("xhdpi", 96), ("xxhdpi", 144), ("xxxhdpi", 192)):
        yield "halfcup", dots, False, PLATFORM / "android" / "res" / f"mipmap-{density}" / "icon.png"
    yield "halfcup", 1024, True, PLATFORM / "ios" / "Assets.xcassets" / "AppIcon.appiconset" / "icon-1024.png"


def draw(drawing, dots, square):
    """The bytes of a PNG file."""
    source = (HERE / f"{drawing}.svg").read_text(encoding="utf-8")
    if square:
        if ROUND not in source:
            sys.exit(f"{drawing}.svg: the field with the round edge is not there; make.py has to learn the new one.")
        source = source.replace(ROUND, SQUARE)
    got = subprocess.run(["rsvg-convert", "-w", str(dots), "-h", str(dots)], input=source.encode(), capture_output=True,
                         check=False)
    if got.returncode:
        sys.exit(f"{drawing}.svg: {got.stderr.decode(errors='replace').strip()}")
    return without_alpha(got.stdout) if square else got.stdout


def pixels(png):
    """(width, height, channels, bytes) of a PNG of 8 bits a channel, RGB or RGBA, not interlaced (ISO/IEC 15948)."""
    if png[:8] != b"\x89PNG\r\n\x1a\n":
        raise ValueError("is no PNG file")
    at, head, packed = 8, None, b""
    while at + 8 <= len(png):
        length, kind = struct.unpack(">I4s", png[at:at + 8])
        body = png[at + 8:at + 8 + length]
        if struct.unpack(">I", png[at + 8 + length:at + 12 + length])[0] != zlib.crc32(kind + body):
            raise ValueError(f"is damaged: the sum of its part {kind.decode('latin-1')} is wrong")
        head = struct.unpack(">IIBBBBB", body) if kind == b"IHDR" else head
        packed += body if kind == b"IDAT" else b""
        at += 12 + length
    if not head or head[2] != 8 or head[3] not in (2, 6) or head[6]:
        raise ValueError("is not RGB or RGBA with 8 bits a channel")
    width, height, channels = head[0], head[1], 3 if head[3] == 2 else 4
    data, row_length = zlib.decompress(packed), width * channels
    above, out = bytearray(row_length), bytearray()
    for y in range(height):
        start = y * (row_length + 1)
        filter_kind, row = data[start], bytearray(data[start + 1:start + 1 + row_length])
        for x in range(row_length):
            left = row[x - channels] if x >= channels else 0
            corner = above[x - channels] if x >= channels else 0
            guess = (0, left, above[x], (left + above[x]) // 2, nearest(left, above[x], corner))[filter_kind]
            row[x] = (row[x] + guess) & 255
        out += row
        above = row
    return width, height, channels, bytes(out)


def nearest(left, up, corner):
    guess = left + up - corner
    return min((abs(guess - left), 0, left), (abs(guess - up), 1, up), (abs(guess - corner), 2, corner))[2]


def without_alpha(png):
    width, height, channels, data = pixels(png)
    if channels == 3:
        return png
    rows = b"".join(b"\0" + bytes(b for i, b in enumerate(data[y * width * 4:(y + 1) * width * 4]) if i % 4 != 3)
                    for y in range(height))

    def part(kind, body):
        return struct.pack(">I", len(body)) + kind + body + struct.pack(">I", zlib.crc32(kind + body))
    return (b"\x89PNG\r\n\x1a\n" + part(b"IHDR", struct.pack(">IIBBBBB", width, height, 8, 2, 0, 0, 0))
            + part(b"IDAT", zlib.compress(rows, 9)) + part(b"IEND", b""))


def trouble(file, drawn):
    """What is wrong with the kept picture, or nothing."""
    if not file.exists():
        return "is missing"
    if file.read_bytes() == drawn:
        return ""
    try:
        kept, new = pixels(file.read_bytes()), pixels(drawn)
    except (ValueError, IndexError, struct.error, zlib.error) as error:
        return str(error)
    if kept[:3] != new[:3]:
        return f"has {kept[0]} x {kept[1]} dots and {kept[2]} channels, not {new[0]} x {new[1]} and {new[2]}"
    changed = sum(abs(a - b) > MUCH for a, b in zip(kept[3], new[3])) / len(new[3])
    return f"is not what its drawing gives ({changed:.1%} of it)" if changed > MOST_MUCH_CHANGED else ""


def main(arguments):
    if arguments not in ([], ["--check"]):
        print(__doc__, file=sys.stderr)
        return 2
    if not shutil.which("rsvg-convert"):
        print("Skipped: rsvg-convert is not there (Debian's package librsvg2-bin)")
        return 77 if arguments else 1
    wrong = count = 0
    for drawing, dots, square, file in wanted():
        count += 1
        drawn = draw(drawing, dots, square)
        if arguments:
            said = trouble(file, drawn)
            if said:
                wrong += 1
                print(f"{file.relative_to(PLATFORM.parent)} {said}. assets/icons/make.py draws it anew.")
        elif trouble(file, drawn):
            file.parent.mkdir(parents=True, exist_ok=True)
            file.write_bytes(drawn)
            print(file.relative_to(PLATFORM.parent))
    print(f"{count} icons, {wrong} wrong")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
