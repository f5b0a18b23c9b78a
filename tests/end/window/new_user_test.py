"""A new user's path through the real window by the long forms, by taps alone: new job, sizes, blocks, tables, people, the
plan, the sheets. At most forty taps; the program knows nothing of the test. Once with a mouse, and
once with a finger and no keyboard: then the quilt and two people get names on letters to tap. Letters
are not counted, all else is: opening a name, taking it, and what is mended after bad input.
"""

import json
import shutil
import sqlite3
import subprocess
import sys
import tempfile
import time
from pathlib import Path

from finger import Finger
from window_test import Display, Program, until

MOST_TAPS = 40
LOWEST = 770  # of a window 800 high


class User:
    def __init__(self, program):
        self.program = program
        self.taps = 0

    def tap(self, *names):
        for name in names:
            self.in_sight(name)
            self.program.tap(name)
            self.taps += 1

    def in_sight(self, name):
        """Pulls the list up in which it lies below the window's edge; every pull counts as a tap."""
        x, y = self.program.wait_for(name)
        while y > LOWEST:
            if self.program.finger:
                self.program.finger.pull(x, 650, 250)
            else:
                subprocess.run(["xdotool", "mousemove", str(x), "600", "click", "--repeat", "4", "5"],
                               env=self.program.environment, check=True)
            self.taps += 1
            below = y
            x, y = self.program.at_rest(name)
            assert y < below, f"'{name}' cannot be pulled into sight"

    def type(self, field, figures):
        self.tap(f"field-{field}", *(f"key-{figure}" for figure in figures), "take")

    def write(self, field, name):
        """A name on letters to tap, which begin words with capitals by themselves."""
        self.tap(f"field-{field}")
        for letter in name.lower():
            self.program.tap("letter-space" if letter == " " else f"letter-{letter}")
        self.tap("letter-take")

    def refused(self, field, figures):
        """What is not accepted: said in a sentence, and the field stays open."""
        self.tap(f"field-{field}", *(f"key-{figure}" for figure in figures), "take")
        self.program.wait_for("problem")


def job_of(home):
    """The job in the library, as the program has stored it."""
    library = Path(home, "data/bastewright/library.sqlite")
    copy = Path(home, "copy")
    shutil.rmtree(copy, ignore_errors=True)
    copy.mkdir()
    for part in library.parent.glob(library.name + "*"):
        shutil.copy(part, copy)
    with sqlite3.connect(copy / library.name) as connection:
        return json.loads(connection.execute("SELECT text FROM jobs ORDER BY id DESC").fetchone()[0])


def with_a_mouse(executable, display):
    with tempfile.TemporaryDirectory() as home:
        program = Program(executable, display, home)
        program.pause = 0.25
        user = User(program)
        user.tap("newQuilt", "guideSkip", "tile-quilt")
        user.type("width0", "88")
        user.type("length0", "112")
        user.tap("field-grid")
        user.type("columns", "7")
        user.type("rows", "9")
        user.type("sashing", "2")
        user.tap("keepMeasured")
        user.tap("closePane", "tile-room", "addTable", "edge0", "closePane")
        user.tap("tile-people", "addPerson", "addPerson", "closePane")
        user.tap("pass2", "pass1")
        to_the_sheets(user, home)
        job = job_of(home)
        assert job["top"]["width"] == [88] and job["top"]["length"] == [112], job["top"]
        grid = job["top"]["grid"]
        assert (grid["columns"], grid["rows"], grid["sashing"], grid["border"]) == (7, 9, 2, 3), grid
        assert job["room"]["tables"][0]["count"] == 2 and job["room"]["walls"] == ["head"], job["room"]
        assert len(job["helpers"]) == 3, job["helpers"]
        program.kill()
        return user.taps


def with_a_finger(executable, display):
    with tempfile.TemporaryDirectory() as home:
        program = Program(executable, display, home, finger=Finger(1280, 800))
        program.pause = 0.2
        user = User(program)
        user.tap("newQuilt", "guideSkip", "tile-quilt")
        user.write("name", "Moon 2")
        user.refused("width0", "0")
        assert job_of(home)["top"]["width"] != [0], "a width of nothing was taken"
        assert job_of(home)["name"] == "Moon 2", "bad input lost what was given before"
        user.tap("key-erase", "key-8", "key-8", "take")
        user.type("length0", "96")
        user.tap("closePane", "tile-room", "addTable", "closePane")
        user.tap("tile-people", "addPerson", "card-Me")
        user.write("helper0/name", "Ada")
        user.tap("allPeople", "card-Helper 2")
        user.write("helper1/name", "Bo")
        user.tap("closePane")
        to_the_sheets(user, home)
        job = job_of(home)
        assert job["top"]["width"] == [88] and job["top"]["length"] == [96], job["top"]
        assert [helper["name"] for helper in job["helpers"]] == ["Ada", "Bo"], job["helpers"]
        program.kill()
        return user.taps


def to_the_sheets(user, home):
    user.tap("sheets", "savePdf")
    until(lambda: list(Path(home).rglob("*.pdf")), "no sheets were written")


def main(executable):
    with Display() as display:
        for path in (with_a_mouse, with_a_finger):
            begun = time.monotonic()
            taps = path(executable, display)
            print(f"{path.__name__}, from nothing to the sheets: {taps} taps, "
                  f"{time.monotonic() - begun:.0f} s with waiting")
            assert taps <= MOST_TAPS
    print("2 passed, 0 failed")


if __name__ == "__main__":
    main(sys.argv[1])
