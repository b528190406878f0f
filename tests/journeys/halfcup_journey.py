# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
"""The real program on a display of its own, used the way a screen reader uses it: by name, never by place.

A journey calls `run(journey)` with a function that takes a Stage. Everything a run needs (display, session bus,
accessibility bus, home folder) is its own, so that several can run side by side, and goes with it.
Exit codes: 0 passed, 1 failed, 77 something that is needed is not on this machine.
"""

import atexit
import ctypes
import os
import shutil
import signal
import sqlite3
import subprocess
import sys
import tempfile
import time

SKIPPED = 77
PATIENCE_S = 15
MOST_TABS = 60  # more than any page has stops
KEYSYM_TAB = 0xFF09
WHOLE_RUN_S = 110  # ends before ctest's own limit of 120 s, so that the buses and the display are cleared away
LAUNCHERS = ("/usr/libexec/at-spi-bus-launcher", "/usr/lib/at-spi2-core/at-spi-bus-launcher")
INSIDE = "HALFCUP_JOURNEY_INSIDE"


class Failed(Exception):
    pass


def skip(sentence):
    print(f"Skipped: {sentence}")
    sys.exit(SKIPPED)


def check(truth, sentence):
    if not truth:
        raise Failed(sentence)


def _die_with_parent():
    ctypes.CDLL(None).prctl(1, signal.SIGKILL)  # PR_SET_PDEATHSIG: nothing is left behind by a run that is killed


def _go_inside():
    """Starts this script again inside a private session bus and home, and does not return."""
    launcher = next((path for path in LAUNCHERS if os.path.exists(path)), None)
    for program, package in (("Xvfb", "xvfb"), ("dbus-run-session", "dbus-daemon")):
        if not shutil.which(program):
            skip(f"{program} is not there (Debian's package {package})")
    if not launcher:
        skip("the accessibility bus is not there (Debian's package at-spi2-core)")
    try:
        import pyatspi  # noqa: F401
    except (ImportError, ValueError):
        skip("pyatspi is not there (Debian's package python3-pyatspi, for /usr/bin/python3)")
    home = tempfile.mkdtemp(prefix="halfcup-journey-")
    atexit.register(shutil.rmtree, home, ignore_errors=True)
    environment = {key: value for key, value in os.environ.items()
                   if not key.startswith(("XDG_", "DBUS_", "AT_SPI", "QT_")) and key not in ("DISPLAY", "WAYLAND_DISPLAY")}
    environment.update({INSIDE: launcher, "HOME": home, "XDG_RUNTIME_DIR": os.path.join(home, "runtime"), "TZ": "UTC",
                        "LC_ALL": "C.UTF-8", "QT_LINUX_ACCESSIBILITY_ALWAYS_ON": "1", "QT_QPA_PLATFORM": "xcb",
                        "QT_QUICK_BACKEND": "software", "NO_AT_BRIDGE": "0", "GSETTINGS_BACKEND": "memory"})
    for name, folder in (("XDG_DATA_HOME", "data"), ("XDG_CONFIG_HOME", "config"), ("XDG_CACHE_HOME", "cache"),
                         ("XDG_RUNTIME_DIR", "runtime")):
        environment[name] = os.path.join(home, folder)
        os.mkdir(environment[name], 0o700)
    inside = subprocess.Popen(["dbus-run-session", "--", sys.executable, "-B", *sys.argv], env=environment,
                              preexec_fn=_die_with_parent)
    signal.signal(signal.SIGTERM, lambda *_: sys.exit(1))
    try:
        code = inside.wait(WHOLE_RUN_S + 5)
    except subprocess.TimeoutExpired:
        inside.kill()
        print("The run took too long.")
        code = 1
    sys.exit(code)


class Stage:
    """One display and its buses, and the program on it, which may be started more than once."""

    def __init__(self, program):
        self.program = program
        self.folder = os.environ["HOME"]
        self.database = os.path.join(self.folder, "records.db")
        self.child = None
        self.helpers = []
        self.stumble = None  # the last fault of the accessibility bus, told where a journey fails
        os.environ["DISPLAY"] = self._new_display()
        self._help([os.environ[INSIDE], "--launch-immediately"])
        import pyatspi  # only here: it connects to whatever bus and display there are
        self.atspi = pyatspi

    def _new_display(self):
        reading, writing = os.pipe()
        # -noreset: else the server begins anew whenever the program ends, and is deaf for that moment.
        self._help(["Xvfb", "-displayfd", str(writing), "-noreset", "-screen", "0", "480x960x24", "-nolisten", "tcp"],
                   pass_fds=[writing])
        os.close(writing)
        with os.fdopen(reading) as told:
            number = told.readline().strip()
        check(number.isdigit(), "Xvfb did not start")
        return ":" + number

    def _help(self, command, pass_fds=()):
        self.helpers.append(subprocess.Popen(command, pass_fds=pass_fds, preexec_fn=_die_with_parent,
                                             stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL))

    # The program.

    def start(self, *options, database=True):
        check(self.child is None, "the program runs already")
        where = ["--database", self.database] if database else []
        self.log = open(os.path.join(self.folder, "program.log"), "ab")
        self.child = subprocess.Popen([self.program, "--size", "360x740", *where, *options], stdout=self.log,
                                      stderr=self.log, preexec_fn=_die_with_parent)

    def kill(self):
        """As a phone does that runs out of memory: no word before it."""
        self.child.send_signal(signal.SIGKILL)
        self.child.wait()
        self.child = None

    def quit(self):
        self.child.terminate()
        self.child.wait(PATIENCE_S)
        self.child = None

    def close(self):
        if self.child and self.child.poll() is None:
            self.kill()
        for helper in reversed(self.helpers):
            helper.terminate()  # Xvfb takes its lock and its socket with it
            try:
                helper.wait(5)
            except subprocess.TimeoutExpired:
                helper.kill()
                helper.wait()
        self.helpers = []

    def what_it_said(self):
        with open(os.path.join(self.folder, "program.log"), "rb") as log:
            return log.read().decode(errors="replace")

    # What is on the page, as a screen reader is told it.

    def _window(self):
        for application in self.atspi.Registry.getDesktop(0):
            if application and application.get_process_id() == self.child.pid:
                return application
        return None

    def _walk(self, item):
        state = item.getState()
        # Pages and sheets that are not shown stay in the tree, without "showing".
        if not state.contains(self.atspi.STATE_SHOWING) and item.getRole() not in (
                self.atspi.ROLE_APPLICATION, self.atspi.ROLE_FRAME, self.atspi.ROLE_WINDOW):
            return
        yield item
        for child in item:
            if child:
                yield from self._walk(child)

    def items(self):
        """All that is shown now; what vanishes while it is looked at is not shown."""
        if self.child.poll() is not None:
            raise Failed(f"the program ended with {self.child.returncode}:\n{self.what_it_said()}")
        found = []
        try:
            window = self._window()
            if window:
                for item in self._walk(window):
                    found.append((item, item.name, item.getRole()))
        except Exception as error:  # pyatspi raises GLib.GError, LookupError and more where an item has gone
            if isinstance(error, (Failed, TimeoutError)):
                raise
            self.stumble = error
            return []
        return found

    def text(self):
        return "\n".join(name for _, name, _ in self.items() if name)

    def wait(self, wanted, what, patience_s=PATIENCE_S):
        """Asks `wanted` until it gives something, and fails with what is on the page."""
        until = time.monotonic() + patience_s
        while True:
            found = wanted()
            if found:
                return found
            if time.monotonic() > until:
                raise Failed(f"{what} did not come. On the page is:\n{self.text()}\n(bus: {self.stumble!r})")
            time.sleep(0.1)

    def button(self, name, begins=False):
        """The one button of that name; two of a name are a fault, for nobody could tell them apart."""
        def look():
            return [item for item, its_name, role in self.items()
                    if role in (self.atspi.ROLE_PUSH_BUTTON, self.atspi.ROLE_RADIO_BUTTON)
                    and (its_name.startswith(name) if begins else its_name == name)]
        found = self.wait(look, f"the button '{name}'")
        check(len(found) == 1 or begins, f"there are {len(found)} buttons '{name}'")
        return found[0]

    def press(self, name, begins=False):
        button = self.button(name, begins)
        check(button.getState().contains(self.atspi.STATE_ENABLED), f"'{name}' cannot be pressed now")
        self.act(button, name)

    def act(self, item, name):
        actions = item.queryAction()
        names = [actions.getName(number).lower() for number in range(actions.nActions)]
        check("press" in names, f"'{name}' has no action to press it, only {names}")
        actions.doAction(names.index("press"))

    def sees(self, words, patience_s=PATIENCE_S):
        self.wait(lambda: words in self.text(), f"'{words}'", patience_s)

    def tab_to(self, name, begins=False):
        """Moves with the Tab key alone until what has that name is in sight: the page scrolls with the keyboard.

        From Qt 6.8 on, rows that a list has scrolled out of sight are not in the tree at all."""
        for _ in range(MOST_TABS):
            items = self.items()
            if any(its_name.startswith(name) if begins else its_name == name for _, its_name, _ in items):
                return
            self._take_the_keyboard(items)
            self.atspi.Registry.generateKeyboardEvent(KEYSYM_TAB, None, self.atspi.KEY_SYM)
            time.sleep(0.1)
        raise Failed(f"'{name}' is not reached by the Tab key. On the page is:\n{self.text()}")

    def _take_the_keyboard(self, items):
        """A window manager would have given it to the window; there is none here."""
        states = [(item, item.getState()) for item, _, _ in items]
        if not any(state.contains(self.atspi.STATE_FOCUSED) for _, state in states):
            for item, state in states:
                if state.contains(self.atspi.STATE_FOCUSABLE):
                    item.queryComponent().grabFocus()
                    return

    def write(self, field, words):
        """Types into the empty field of that name, key by key: Qt 6.4 offers no other way to a screen reader."""
        def look():
            return [item for item, name, role in self.items()
                    if name == field and role in (self.atspi.ROLE_TEXT, self.atspi.ROLE_ENTRY)]
        item = self.wait(look, f"the field '{field}'")[0]
        there = lambda: item.queryText().getText(0, -1)
        check(there() == "", f"in the field '{field}' is '{there()}' already")
        item.queryComponent().grabFocus()
        self.wait(lambda: item.getState().contains(self.atspi.STATE_FOCUSED), f"the keyboard in the field '{field}'")
        self.atspi.Registry.generateKeyboardEvent(0, words, self.atspi.KEY_STRING)
        self.wait(lambda: there() == words, f"'{words}' in the field '{field}'")

    # What is on the disk, read with another program than the one that wrote it.

    def rows(self, question, *values, path=None):
        database = sqlite3.connect(f"file:{path or self.database}?mode=ro", uri=True)
        database.row_factory = sqlite3.Row
        try:
            return database.execute(question, values).fetchall()
        finally:
            database.close()


def run(journey):
    if INSIDE not in os.environ:
        _go_inside()
    stage = None

    def too_long(*_):
        raise TimeoutError("the journey took too long")

    signal.signal(signal.SIGALRM, too_long)
    signal.alarm(WHOLE_RUN_S)
    try:
        stage = Stage(sys.argv[1])
        journey(stage)
        stage.close()
        print(f"{journey.__name__}: passed")
        code = 0
    except (Failed, TimeoutError, OSError, sqlite3.Error) as error:
        print(f"{journey.__name__}: FAILED: {error}")
        code = 1
    finally:
        if stage:
            stage.close()
    sys.stdout.flush()
    os._exit(code)  # libatspi waits for a bus that is being taken down
