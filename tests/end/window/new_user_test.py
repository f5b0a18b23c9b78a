"""A new user's path through the real window, by taps alone: new job, sizes, blocks, tables, people, the
plan, the sheets. At most forty taps; the program knows nothing of the test.
"""

import json
import shutil
import sqlite3
import subprocess
import sys
import tempfile
import time
from pathlib import Path

from window_test import WAIT, Display, Program

MOST_TAPS = 40


class User:
    def __init__(self, program):
        self.program = program
        self.taps = 0

    def tap(self, *names):
        for name in names:
            self.program.tap(name)
            self.taps += 1

    def type(self, field, figures):
        self.tap(f"field-{field}", *(f"key-{figure}" for figure in figures), "take")

    def drag(self, name, by):
        x, y = self.program.wait_for(name)
        steps = [["mousemove", str(x), str(y)], ["mousedown", "1"]]
        steps += [["mousemove", str(x + by[0] * k // 8), str(y + by[1] * k // 8)] for k in range(1, 9)]
        steps += [["mouseup", "1"]]
        for step in steps:
            subprocess.run(["xdotool", *step, "sleep", "0.04"], env=self.program.environment, check=True)
        time.sleep(self.program.pause)
        self.taps += 1


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


def main(executable):
    with tempfile.TemporaryDirectory() as home, Display() as display:
        program = Program(executable, display, home)
        user = User(program)
        begun = time.monotonic()
        user.tap("newQuilt", "tile-quilt")
        user.type("width0", "88")
        user.type("length0", "112")
        user.tap("field-grid")
        user.type("sashing", "2")
        user.tap("closePane", "tile-room", "addTable", "edge0", "closePane")
        user.tap("tile-people", "addPerson", "addPerson", "closePane")
        user.tap("nextPass", "previousPass")
        user.tap("sheets", "savePdf")
        end = time.monotonic() + WAIT
        while not list(Path(home).rglob("*.pdf")):
            assert time.monotonic() < end, "no sheets were written"
            time.sleep(0.2)
        job = job_of(home)
        assert job["top"]["grid"]["sashing"] == 2, job["top"]
        assert job["room"]["tables"][0]["count"] == 2 and job["room"]["walls"] == ["head"], job["room"]
        assert len(job["helpers"]) == 3, job["helpers"]
        print(f"from nothing to the sheets: {user.taps} taps, {time.monotonic() - begun:.0f} s with waiting")
        assert user.taps <= MOST_TAPS
        program.kill()
    print("1 passed, 0 failed")


if __name__ == "__main__":
    main(sys.argv[1])
