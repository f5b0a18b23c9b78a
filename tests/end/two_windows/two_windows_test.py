"""Two windows of the built program, each a process of its own, at one session: a tick in one is shown
by the other within a second, and a zone tapped in both at the same moment is opened once.
"""

import sys
import tempfile
import threading
import time
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parent.parent / "window"))
from window_test import Display, Program, demo_at_the_table, events, hear_cautions, zones  # noqa: E402


def becomes(program, name, wanted, within):
    start = time.monotonic()
    while time.monotonic() - start < within:
        if (name in program.look()) == wanted:
            return time.monotonic() - start
        time.sleep(0.02)
    raise AssertionError(f"'{name}' was not {'on' if wanted else 'off'} within {within} s")


def stored_by_now(home):
    """How many events are stored, once none has come for a second: a busy machine stores late."""
    before, now = -1, events(home)
    while now != before:
        time.sleep(1)
        before, now = now, events(home)
    return now


def main(executable):
    with tempfile.TemporaryDirectory() as home, Display() as left, Display() as right:
        one = Program(executable, left, home)
        demo_at_the_table(one)
        two = Program(executable, right, home, "places-two")
        two.wait_for("step")  # the same session, without being asked
        first = zones(one)
        assert zones(two) == first
        assert "tableUndo" not in two.look(), "nothing is done yet"

        hear_cautions(one)
        took = becomes(two, "tableUndo", True, 2)
        print(f"a tick of one window was in the other {took:.2f} s after the tap had settled")
        one.tap("tableUndo")
        time.sleep(0.5)
        one.tap("tableUndo")  # and the answer
        becomes(two, "tableUndo", False, 2)

        hear_cautions(two)
        for _ in range(5):
            two.tap("step")
            time.sleep(0.3)
        before = stored_by_now(home)
        both = [threading.Thread(target=p.tap, args=(first[0],)) for p in (one, two)]
        for thread in both:
            thread.start()
        for thread in both:
            thread.join()
        # The second tap finds the zone open and not to be closed yet: never lost, never doubled.
        after = stored_by_now(home)
        assert after - before == 1, after - before
        one.tap("tableUndo")
        assert zones(one) == zones(two) == first
        one.kill()
        stored = events(home)
        two.tap(first[1])  # goes on alone
        assert events(home) == stored + 1
        two.kill()
    print("1 passed, 0 failed")


if __name__ == "__main__":
    main(sys.argv[1])
