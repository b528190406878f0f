#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""Makes the sounds of the program from the notes below; the wav files beside this script are its output.

    make.py            write the files anew
    make.py --check    compare the files with the notes, change nothing; exit code 1 if they differ

Chosen for a small loudspeaker in a pocket, in wind, beside ten thousand bees: a colony hums at a few hundred hertz and
a phone's loudspeaker gives little below that, so every note lies well above and carries some overtones. The tones are
told apart by rhythm alone (one click; two even; three quick; two short and a long; two slow), and by pitch alone.
All of it is our own choice; no source.
"""

import array
import math
import pathlib
import sys
import wave

RATE_HZ = 44100
PEAK = 0.8  # of full scale: headroom for players that change the rate
ATTACK_S = 0.004  # a note that starts at full strength clicks
RELEASE_S = 0.012
# Qt's player stops the loudspeaker when the file ends and drops what is still in the buffer: 0.10 s of each tone was
# lost in a recording from a PulseAudio null sink (Qt 6.4.2). So every file ends in silence that may be lost.
TAIL_S = 0.30

# Name: notes of (pitch in Hz, length in s, pause after it in s). Pitch from the equal-tempered scale, A4 = 440 Hz.
TONES = {
    "half_time": [(783.99, 0.22, 0.06), (1174.66, 0.22, 0.0)],  # G5 D6
    "ten_seconds": [(1567.98, 0.07, 0.07)] * 2 + [(1567.98, 0.07, 0.0)],  # G6 three times
    "end": [(880.00, 0.13, 0.04), (1108.73, 0.13, 0.04), (1318.51, 0.75, 0.0)],  # A5 C#6 E6
    "count_tick": [(2093.00, 0.03, 0.0)],  # C7
    "trouble": [(659.26, 0.32, 0.10), (523.25, 0.42, 0.0)],  # E5 C5
}
OVERTONES = ((1, 1.0), (2, 0.35), (3, 0.15))


def note(pitch_hz, length_s):
    count = round(length_s * RATE_HZ)
    out = []
    for i in range(count):
        t = i / RATE_HZ
        tone = sum(share * math.sin(2 * math.pi * pitch_hz * n * t) for n, share in OVERTONES)
        attack = min(1.0, t / ATTACK_S)
        release = min(1.0, (count - 1 - i) / (RELEASE_S * RATE_HZ))
        out.append(tone * attack * release * math.exp(-1.2 * t / length_s))
    return out


def samples(notes):
    out = []
    for pitch_hz, length_s, pause_s in notes:
        out += note(pitch_hz, length_s)
        out += [0.0] * round(pause_s * RATE_HZ)
    out += [0.0] * round(TAIL_S * RATE_HZ)
    scale = PEAK * 32767 / max(abs(x) for x in out)
    return array.array("h", (round(x * scale) for x in out))


def write(path, values):
    if sys.byteorder == "big":
        values = array.array("h", values)
        values.byteswap()
    with wave.open(str(path), "wb") as file:
        file.setnchannels(1)
        file.setsampwidth(2)
        file.setframerate(RATE_HZ)
        file.writeframes(values.tobytes())


def read(path):
    with wave.open(str(path), "rb") as file:
        if (file.getnchannels(), file.getsampwidth(), file.getframerate()) != (1, 2, RATE_HZ):
            return None
        values = array.array("h", file.readframes(file.getnframes()))
    if sys.byteorder == "big":
        values.byteswap()
    return values


def main():
    folder = pathlib.Path(__file__).resolve().parent
    check = sys.argv[1:] == ["--check"]
    if sys.argv[1:] and not check:
        sys.exit(__doc__)
    wrong = []
    for name, notes in TONES.items():
        path = folder / f"{name}.wav"
        made = samples(notes)
        if not check:
            write(path, made)
            continue
        there = read(path) if path.exists() else None
        # One step of difference is allowed: sines of two systems may round apart.
        if there is None or len(there) != len(made) or any(abs(a - b) > 1 for a, b in zip(there, made)):
            wrong.append(path.name)
    strangers = {p.name for p in folder.glob("*.wav")} - {f"{name}.wav" for name in TONES}
    if check and (wrong or strangers):
        for name in wrong:
            print(f"{name} is not what the notes in make.py give; run make.py.", file=sys.stderr)
        for name in sorted(strangers):
            print(f"{name} has no notes in make.py.", file=sys.stderr)
        sys.exit(1)


if __name__ == "__main__":
    main()
