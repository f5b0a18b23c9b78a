"""Drives the built program as a person would: under a display of its own, with real clicks.

Opens an example, waits for the plan, starts a session, ticks steps and zones, kills the program with
no warning, starts it again: it is at the table, and every tick that was shown is there.
"""

import json
import os
import shutil
import signal
import sqlite3
import subprocess
import sys
import tempfile
import time
from pathlib import Path

LOWEST = 780  # of a window 800 pixels high
WAIT = 60  # seconds for a plan or a slow machine
# What a start has no time for.
OF_PRINTING = ["bastewright-printing.so", "libQt6PrintSupport.", "libQt6Widgets.", "libcups.", "libgnutls."]


class Display:
    """An X server without a screen, on the first number that is free."""

    def __init__(self, size="1280x800"):
        self.size = size

    def __enter__(self):
        read, write = os.pipe()
        self.process = subprocess.Popen(
            ["Xvfb", "-displayfd", str(write), "-screen", "0", self.size + "x24", "-nolisten", "tcp"],
            pass_fds=[write], stderr=subprocess.DEVNULL)
        os.close(write)
        with os.fdopen(read) as pipe:
            self.name = ":" + pipe.readline().strip()
        return self

    def __exit__(self, *unused):
        self.process.terminate()
        self.process.wait()


class Program:
    def __init__(self, executable, display, home, places="places", finger=None, more=None):
        self.places = Path(home) / places
        self.places.unlink(missing_ok=True)
        self.environment = {
            "PATH": os.environ["PATH"], "HOME": home, "DISPLAY": display.name,
            "XDG_RUNTIME_DIR": home, "XDG_DATA_HOME": home + "/data", "XDG_CONFIG_HOME": home + "/config",
            "QT_QPA_PLATFORM": "xcb", "LC_ALL": "C.UTF-8", "BASTEWRIGHT_TELL_PLACES": str(self.places)}
        self.environment |= more or {}
        self.finger = finger  # else the mouse
        if finger:
            self.environment |= finger.environment
        self.process = subprocess.Popen([executable], env=self.environment)

        self.pause = 0.4  # seconds until sheets and lists stand still

    def look(self):
        try:
            lines = self.places.read_text().splitlines()
        except FileNotFoundError:
            return {}
        found = {}
        for line in lines:
            name, x, y, enabled = line.rsplit(" ", 3)
            if enabled == "1":
                found.setdefault(name, (int(x), int(y)))
        return found

    def wait_for(self, name):
        end = time.monotonic() + WAIT
        while time.monotonic() < end:
            if self.process.poll() is not None:
                raise AssertionError(f"the program ended with {self.process.returncode}")
            if name in (seen := self.look()):
                return seen[name]
            time.sleep(0.1)
        raise AssertionError(f"nothing called '{name}' to tap; there is {sorted(self.look())}")

    def wait_for_news(self):
        asked = time.time()
        while self.places.stat().st_mtime <= asked and time.time() < asked + WAIT:
            time.sleep(0.03)

    def at_rest(self, name):
        """Its place, once a fresh look finds it where it was a moment before."""
        place = self.wait_for(name)
        end = time.monotonic() + WAIT
        while time.monotonic() < end:
            time.sleep(self.pause)
            self.wait_for_news()
            before, place = place, self.wait_for(name)
            if place == before:
                return place
        raise AssertionError(f"'{name}' never stands still")

    def in_sight(self, name):
        """Its place, once the wheel has brought it up from below the window's edge."""
        x, y = self.at_rest(name)
        for _ in range(20):
            if y < LOWEST or self.finger:
                break
            subprocess.run(["xdotool", "mousemove", str(x), "600", "click", "5"], env=self.environment, check=True)
            x, y = self.at_rest(name)
        return x, y

    def tap(self, name):
        x, y = self.in_sight(name)
        if self.finger:
            if not self.finger.touches:  # Qt hands touches to the window in focus; no window manager gives it
                subprocess.run(["xdotool", "search", "--onlyvisible", "--name", "Bastewright", "windowfocus"],
                               env=self.environment, check=True)
                time.sleep(self.pause)
            self.finger.tap(x, y)
            time.sleep(self.pause)
            return
        subprocess.run(["xdotool", "mousemove", str(x), str(y), "sleep", "0.05", "click", "1"],
                       env=self.environment, check=True)
        time.sleep(self.pause)

    def mapped(self, *names):
        """Which of these libraries the program has opened, as the kernel lists them."""
        maps = Path(f"/proc/{self.process.pid}/maps").read_text()
        return [name for name in names if f"/{name}" in maps]

    def internet(self):
        """The sockets of the internet that the program holds, as the kernel lists them: local and far
        address and state ("0A" listens), each in the kernel's hexadecimal."""
        mine = set()
        for entry in Path(f"/proc/{self.process.pid}/fd").iterdir():
            try:
                target = os.readlink(entry)
            except FileNotFoundError:
                continue  # closed meanwhile
            if target.startswith("socket:["):
                mine.add(target[8:-1])
        found = []
        for kind in ("tcp", "tcp6", "udp", "udp6", "raw", "raw6"):
            table = Path(f"/proc/{self.process.pid}/net/{kind}")
            for line in table.read_text().splitlines()[1:] if table.exists() else []:
                words = line.split()
                if words[9] in mine:
                    found.append((words[1], words[2], words[3]))
        return found

    def kill(self):
        self.process.send_signal(signal.SIGKILL)
        self.process.wait()


def stored(home):
    """What the library holds, event by event, read without the program."""
    library = Path(home, "data/bastewright/library.sqlite")
    copy = Path(home, "copy")
    shutil.rmtree(copy, ignore_errors=True)
    copy.mkdir()
    for part in library.parent.glob(library.name + "*"):  # with its write-ahead log
        shutil.copy(part, copy)
    with sqlite3.connect(copy / library.name) as connection:
        return [json.loads(row[0]) for row in connection.execute("SELECT event FROM events ORDER BY sequence")]


def events(home):
    return len(stored(home))


def demo_at_the_table(program):
    """The first example planned, and its session begun."""
    program.tap("showExamples")
    program.tap("example0")
    program.tap("toTable")
    program.wait_for("step")


def hear_cautions(program):
    """The first step: what has to be heard before it, and that everybody has."""
    program.tap("step")
    program.tap("yes-cautions")
    program.tap("stepSheetDone")
    program.wait_for("step")


def up_to_pinning(program):
    """Set up, backing, clamps, batting, top, clamps to all three: then pins go in."""
    hear_cautions(program)
    for _ in range(5):
        program.tap("step")
        time.sleep(0.3)  # sooner would be the same tap


def until(found, failing, seconds=WAIT):
    """What `found` gives, as soon as it gives something."""
    end = time.monotonic() + seconds
    while not (out := found()):
        assert time.monotonic() < end, failing
        time.sleep(0.2)
    return out


def hold(program):
    """The step that is held, by two slow taps."""
    program.tap("holdStep")
    time.sleep(0.7)
    if "holdStep" in program.look():
        program.tap("holdStep")


def step_or_hold(program, names, answer):
    """Taps the next step, if there is one among the names seen; False where zones come first. `answer`
    answers what is asked before a pass is let go."""
    if "step" in names:
        try:
            program.tap("step")
        except AssertionError:
            if "step" in program.look():
                raise
            return True  # a busy machine: the tap before has only now been answered
        asked = program.look()
        if "yes-palm-glides" in asked:
            answer()
        elif "yes-cautions" in asked:
            program.tap("yes-cautions")
            program.tap("stepSheetDone")
        time.sleep(0.2)
        return True
    if "holdStep" in names:
        hold(program)
        return True
    return False


def zones(program):
    return sorted(n for n in program.look() if n.startswith("zone-"))


def main(executable):
    with tempfile.TemporaryDirectory() as home, Display() as display:
        program = Program(executable, display, home)
        demo_at_the_table(program)
        before = events(home)
        program.tap(zones(program)[0])  # the backing does not lie yet
        program.wait_for("saidOtherwise")
        assert events(home) == before, "a zone is ticked before its call"
        up_to_pinning(program)
        first = zones(program)
        assert len(first) >= 2, first
        program.tap(first[0])
        program.tap(first[1])
        program.tap(first[0])  # closing has to wait for everybody
        stored = events(home)
        assert stored == before + 9, f"{stored - before} of 9 ticks are stored"
        assert program.internet() == [], "nobody has switched the page for phones on"
        assert program.mapped("libQt6Gui.") == ["libQt6Gui."]
        assert program.mapped(*OF_PRINTING) == [], "nobody has asked for printing"
        program.kill()

        program = Program(executable, display, home)
        program.wait_for("tableUndo")  # back at the table, not on the shelf
        assert zones(program) == first
        assert events(home) == stored
        program.tap("tableUndo")  # takes back the last tick: the second zone is waiting again
        time.sleep(0.3)
        program.tap("tableUndo")
        assert events(home) == stored + 2
        stored = events(home)
        program.tap("more")  # somebody leaves: shown first, then taken, then they come again
        program.tap("whatChanged")
        program.tap("someGoes")
        program.tap("person-Dot")
        program.wait_for("acceptChange")
        assert events(home) == stored, "a change is stored before it is taken"
        program.tap("acceptChange")
        assert events(home) == stored + 2, "who left and the new plan are stored"
        program.tap("more")
        program.tap("whatChanged")
        program.tap("someComes")
        program.tap("person-Dot")
        program.tap("acceptChange")
        assert events(home) == stored + 4
        program.tap("leaveTable")
        program.tap("tile-rehearsal")
        program.tap("play")
        time.sleep(1)
        program.tap("stepForward")
        program.tap("closeRehearsal")
        program.wait_for("sheets")
        program.tap("sheets")
        program.tap("savePdf")
        until(lambda: program.mapped(*OF_PRINTING) == OF_PRINTING, "printing is not opened")
        until(lambda: list(Path(home).rglob("*.pdf")), "no sheets were written")
        assert program.internet() == [], "planning and printing need no network"
        program.kill()
    print("1 passed, 0 failed")


if __name__ == "__main__":
    main(sys.argv[1])
