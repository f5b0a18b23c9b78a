"""Plays the demo from its first step to its last through the real window, by real taps only.

The order is the trade's: every zone of a pass opened, smoothed, closed, looked at below, let go. At
the first check one answer is 'not yet', which must hold the step. At the end every zone is closed in
the library, the session has ended, and all pins are counted back.
"""

import sys
import tempfile
import time
from collections import Counter

from window_test import Display, Program, demo_at_the_table, hold, step_or_hold, stored, until, zones


def kinds(home):
    return Counter(event["kind"] for event in stored(home))


class Player:
    def __init__(self, program, home):
        self.program, self.home = program, home
        self.pass_zones, self.queue = [], []
        self.refused = False

    def one_tap(self):
        """The next thing a person would tap; False where the quilt is finished."""
        names = self.program.look()
        if "countBack" in names:
            return False
        if step_or_hold(self.program, names, self.answer):
            return True
        now = zones(self.program)
        if now != self.pass_zones:
            self.pass_zones, self.queue = now, now * 2  # all open, then all closed
        assert self.queue, f"nothing is left to tap; there is {sorted(names)}"
        self.program.tap(self.queue.pop(0))
        return True

    def answer(self):
        self.program.tap("yes-palm-glides")
        self.program.tap("yes-underside")
        if not self.refused:
            self.refused = True
            self.program.tap("no-spare")
            assert "stepSheetDone" not in self.program.look(), "a 'not yet' did not hold the step"
        self.program.tap("yes-spare")
        self.program.tap("stepSheetDone")


def main(executable):
    with tempfile.TemporaryDirectory() as home, Display() as display:
        program = Program(executable, display, home)
        program.pause = 0.2
        demo_at_the_table(program)
        player = Player(program, home)
        begun = time.monotonic()
        taps = 0
        while player.one_tap():
            taps += 1
            assert taps < 600, "the session does not end"
        told = kinds(home)
        assert told["zone-opened"] == told["zone-closed"] > 0, told
        assert told["check-answered"] >= 4, told
        hold(program)  # the end
        until(lambda: kinds(home)["session-ended"], "the session did not end", 10)
        print(f"{taps} taps in {time.monotonic() - begun:.0f} s; {dict(told)}")
        program.kill()
    print("1 passed, 0 failed")


if __name__ == "__main__":
    main(sys.argv[1])
