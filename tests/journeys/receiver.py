# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""A receiver on a TCP port: plays NMEA 0183 sentences to whoever connects, five moments a second."""

import math
import random
import socket
import threading
import time
from datetime import datetime, timedelta, timezone

EVERY_S = 0.2
METRES_PER_DEGREE = 111_195.0  # pi / 180 times the mean radius of the earth, 6371.0 km


def sentence(body):
    """NMEA 0183: the checksum is the exclusive or of all characters between $ and *."""
    checksum = 0
    for character in body.encode():
        checksum ^= character
    return f"${body}*{checksum:02X}\r\n"


def angle(degrees, width, halves):
    """Degrees and decimal minutes, as NMEA writes them: ddmm.mmmmm."""
    whole = int(abs(degrees))
    minutes = (abs(degrees) - whole) * 60
    return f"{whole:0{width}d}{minutes:08.5f},{halves[degrees < 0]}"


def invented(latitude, longitude, scatter_m=2.0, moments=60, minutes_on=0):
    """Moments of a receiver that lies still, with some metres of scatter; GGA and RMC for each."""
    chance = random.Random(4)
    at = datetime(2026, 5, 18, 7, 40, tzinfo=timezone.utc) + timedelta(minutes=minutes_on)
    for _ in range(moments):
        north, east = chance.gauss(0, scatter_m), chance.gauss(0, scatter_m)
        where = ",".join((angle(latitude + north / METRES_PER_DEGREE, 2, "NS"),
                          angle(longitude + east / METRES_PER_DEGREE / math.cos(math.radians(latitude)), 3, "EW")))
        clock = at.strftime("%H%M%S.00")
        yield (sentence(f"GPGGA,{clock},{where},1,09,0.9,88.0,M,33.0,M,,")
               + sentence(f"GPRMC,{clock},A,{where},0.0,0.0,{at:%d%m%y},,,A"))
        at += timedelta(seconds=1)


def recorded(path):
    """The moments of a recorded log: each begins with its GGA. What comes before the first fix is left out."""
    moment, found = "", []
    with open(path, encoding="ascii", errors="replace", newline="") as log:
        for line in log:
            if line[3:6] == "GGA":
                found.append(moment)
                moment = ""
            moment += line
    found.append(moment)
    return [each for each in found if any(fixes(each))]


def fixes(text):
    """Latitudes and longitudes of the GGA sentences that have a fix, read without the program's code."""
    for line in text.splitlines():
        fields = line.split("*")[0].split(",")
        if line[3:6] == "GGA" and len(fields) > 6 and fields[6] not in ("", "0"):
            yield tuple((float(value[:digits]) + float(value[digits:]) / 60) * (-1 if half in "SW" else 1)
                        for value, digits, half in ((fields[2], 2, fields[3]), (fields[4], 3, fields[5])))


def distance_m(one, other):
    """On a sphere, for places some metres apart."""
    north = (other[0] - one[0]) * METRES_PER_DEGREE
    east = (other[1] - one[1]) * METRES_PER_DEGREE * math.cos(math.radians(one[0]))
    return math.hypot(north, east)


class Receiver:
    def __init__(self, moments):
        self.moments = list(moments)
        self.listener = socket.create_server(("127.0.0.1", 0))
        self.setting = f"nmea:tcp://127.0.0.1:{self.listener.getsockname()[1]}"
        self.connections = 0
        threading.Thread(target=self._listen, daemon=True).start()

    def _listen(self):
        while True:
            line, _ = self.listener.accept()
            self.connections += 1
            threading.Thread(target=self._play, args=(line,), daemon=True).start()

    def _play(self, line):
        """What is put into moments meanwhile is where the receiver has been carried to."""
        try:
            moments, nth = self.moments, 0
            while nth < len(moments):
                line.sendall(moments[nth].encode("ascii", errors="replace"))
                time.sleep(EVERY_S)
                nth += 1
                if self.moments is not moments:
                    moments, nth = self.moments, 0
            line.close()
        except OSError:
            pass  # the program has heard enough
