"""An afternoon as afternoons are, in the real window by real taps: it begins late, a second window and
a phone help, somebody leaves, a table is taken away, pins run short, the rest waits for another day, and
the program is killed. The record at the end says what was done, and nothing else.
"""

import csv
import json
import signal
import sqlite3
import sys
import tempfile
import time
import uuid
from collections import Counter
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parent.parent / "page"))
from page_test import Phone, scanned  # noqa: E402
from window_test import (  # noqa: E402
    Display, Program, demo_at_the_table, hold, step_or_hold, stored, until, up_to_pinning, zones)

BEGINS = 13 * 60 + 25  # minutes of the day by the hall's clock: 25 after what was planned
NIGHT = 24 * 3600 * 1000


def hall_clock():
    """A time zone in which it is BEGINS now (POSIX: hours west of Greenwich)."""
    now = time.gmtime()
    west = (now.tm_hour * 60 + now.tm_min - BEGINS + 720) % 1440 - 720
    return {"TZ": f"HALL{'-' if west < 0 else '+'}{abs(west) // 60:02}:{abs(west) % 60:02}"}


def counting(home):
    """The events that count: those not taken back (undone themselves, to any depth)."""
    events = stored(home)
    out = {}
    for event in reversed(events):
        out[event["id"]] = not any(out[e["id"]] for e in events
                                   if e["kind"] == "undone" and e.get("target") == event["id"]
                                   and e["id"] in out)
    return [e for e in events if out[e["id"]]]


class Hands:
    """Taps whatever comes next, by what the library holds: steps, then zones open, then closed."""

    def __init__(self, home):
        self.home = home
        self.taps = 0

    def stage(self):
        stage = Counter()
        for e in counting(self.home):
            if e["kind"] in ("zone-opened", "zone-closed"):
                stage[e["zone"]] += 1
            elif e["kind"] == "zone-again":
                stage[e["zone"]] -= 1
        return stage

    def next_tap(self, program):
        """False where the quilt is finished."""
        self.taps += 1
        assert self.taps < 500, "the session does not end"
        names = program.look()
        if "countBack" in names:
            return False

        def all_is_well():
            for check in ("palm-glides", "underside", "spare"):
                program.tap("yes-" + check)
            program.tap("stepSheetDone")

        if step_or_hold(program, names, all_is_well):
            return True
        stage = self.stage()
        left = sorted(zones(program), key=lambda z: stage[z.removeprefix("zone-")])
        left = [z for z in left if stage[z.removeprefix("zone-")] < 2]
        assert left, f"nothing is left to tap; there is {sorted(names)}"
        program.tap(left[0])
        return True

    def play(self, program, done):
        while not done(counting(self.home)):
            assert self.next_tap(program), "the quilt is finished too soon"


def change(program, *taps):
    program.tap("more")
    program.tap("whatChanged")
    for name in taps:
        program.tap(name)


def accepted(program, home):
    """Takes what is proposed; the plan that is then in force."""
    before = number("replanned", counting(home))
    program.tap("acceptChange")

    def taken():
        plans = [e for e in counting(home) if e["kind"] == "replanned"]
        return plans[before:] and "acceptChange" not in program.look() and plans[-1]

    return until(taken, "the new plan is not stored", 30)


def number(kind, events):
    return sum(e["kind"] == kind for e in events)


def pins_of(plan, begun):
    """Pins that are in the quilt, or that somebody is to put in by this plan."""
    todo = begun | {task["zone"] for task in plan["tasks"] if task.get("zone")}
    return sum(len(zone["points"]) for zone in plan["zones"] if zone["id"] in todo)


def overnight(home):
    """A night goes by: every time stamp lies a day further back."""
    library = Path(home, "data/bastewright/library.sqlite")
    with sqlite3.connect(library) as connection:
        guards = connection.execute("SELECT name, sql FROM sqlite_master WHERE type = 'trigger'").fetchall()
        for name, _ in guards:  # what is stored never changes otherwise
            connection.execute(f'DROP TRIGGER "{name}"')
        for sequence, text in connection.execute("SELECT sequence, event FROM events").fetchall():
            event = json.loads(text)
            event["at"] -= NIGHT
            connection.execute("UPDATE events SET event = ? WHERE sequence = ?",
                               (json.dumps(event, ensure_ascii=False, separators=(",", ":")), sequence))
        connection.execute("UPDATE sessions SET started_ms = started_ms - ?", (NIGHT,))
        for _, sql in guards:
            connection.execute(sql)
    connection.close()


def main(executable):
    clock = hall_clock()
    with tempfile.TemporaryDirectory() as home, Display() as left, Display() as right:
        hands = Hands(home)
        one = Program(executable, left, home, more=clock)
        one.pause = 0.25
        demo_at_the_table(one)

        # 25 minutes late.
        change(one, "beginNow")
        event = accepted(one, home)
        assert event["session"]["start"] == "13:25" or event["session"]["start"] == "13:26", event["session"]["start"]
        assert isinstance(event["plan"], dict), "a plan is an object"
        up_to_pinning(one)

        # A second window and a phone.
        two = Program(executable, right, home, "places-two", more=clock)
        first = zones(one)
        two.wait_for(first[0])
        two.tap(first[0])
        one.tap("more")
        one.tap("phones")
        one.tap("address-127.0.0.1")
        one.tap("phonesOn")
        one.wait_for("phonesOff")
        time.sleep(1)
        link = scanned(one, home)
        phone = Phone(link)
        assert phone.join(link.split("#")[1]) == 200
        _, table = phone.ask("GET", "/table")
        waiting = next(z for z in table["quilts"][0]["zones"] if z["stage"] == "waiting" and z["hands"])
        tick = {"id": str(uuid.uuid4()), "quilt": 0, "zone": waiting["zone"], "kind": waiting["next"],
                "person": waiting["hands"][0]}
        assert phone.ask("POST", "/tick", tick)[0] == 200
        one.tap("phonesOff")
        one.tap("phoneSheetClose")
        assert number("zone-opened", counting(home)) == 2
        two.kill()

        # Somebody leaves.
        change(one, "someGoes", "person-Cai")
        event = accepted(one, home)
        begun = set(hands.stage())
        for task in event["plan"]["tasks"]:
            if task.get("zone") and task["zone"] not in begun:
                assert "Cai" not in task["people"], task
        hands.play(one, lambda told: number("pass-released", told) == 1)

        # A table less between two passes: what is basted stays, the rest goes by other passes.
        before = event["plan"]
        change(one, "tableLess")
        event = accepted(one, home)
        assert len(event["plan"]["surface"]["tables"]) == 1, event["plan"]["surface"]
        assert event["plan"]["passes"][0]["field"] == before["passes"][0]["field"]
        assert event["session"]["room"]["tables"][0].get("count", 1) == 1

        # Short of pins: wider rows for what is left.
        begun = set(hands.stage())
        there = event["session"]["stash"]["pins"] - 40
        used = pins_of(event["plan"], begun)
        assert used > there, f"{used} pins of {there} are not short"
        print(used, there, flush=True)
        change(one, "pinsChanged", "key-4", "key-0", "pinsLess")
        one.tap("widerRows")
        event = accepted(one, home)
        used = pins_of(event["plan"], begun)
        assert used <= there, f"{used} pins of {there}"
        assert any(e["kind"] == "pins-found" and e["count"] == -40 for e in counting(home))

        # Some of pass 2, then the rest on another day.
        opened = number("zone-opened", counting(home))
        hands.play(one, lambda told: number("zone-opened", told) >= opened + 1)
        change(one, "overnight", "pauseNow")
        one.wait_for("resume")
        one.process.send_signal(signal.SIGTERM)
        one.process.wait(20)
        log = Path(home, "data/bastewright/library.sqlite-wal")
        assert not log.exists() or log.stat().st_size == 0, "the log was not taken into the library"
        overnight(home)
        one = Program(executable, left, home, more=clock)
        one.pause = 0.25
        one.tap("resume")
        one.tap("planFromNow")
        event = accepted(one, home)
        assert number("resumed", counting(home)) == 1
        # More pins have been fetched: everything is planned again.
        change(one, "pinsChanged", "key-5", "key-0", "key-0", "pinsMore")
        accepted(one, home)

        # Killed with no warning, in the middle of it.
        closed = number("zone-closed", counting(home))
        hands.play(one, lambda told: number("zone-closed", told) >= closed + 1)
        kept = len(stored(home))
        one.kill()
        one = Program(executable, left, home, more=clock)
        one.pause = 0.25
        one.wait_for("tableUndo")
        assert len(stored(home)) == kept

        while hands.next_tap(one):
            pass
        hold(one)
        until(lambda: number("session-ended", counting(home)), "the session did not end", 20)

        # The record is what was done.
        one.tap("more")
        one.tap("showRecord")
        one.tap("recordTable")
        files = until(lambda: list(Path(home).rglob("record-*.csv")), "no record was written", 20)
        with open(files[0], newline="", encoding="utf-8") as file:
            rows = list(csv.DictReader(file, strict=True))
        done = counting(home)
        ticks = Counter((e["zone"].rsplit(".", 1)[-1], e.get("person", "")) for e in done
                        if e["kind"] in ("zone-opened", "zone-closed"))
        told = Counter((r["zone"], r["person"]) for r in rows if r["call"] in ("pin", "close") and r["zone"])
        assert ticks == told, (ticks - told, told - ticks)
        assert number("pass-released", done) == sum(r["what"] == "pass-released" for r in rows)
        assert {"person-out", "pins-found", "paused", "resumed", "session-ended"} <= {r["what"] for r in rows}
        assert any(r["person"] == tick["person"] and r["zone"] == tick["zone"].rsplit(".", 1)[-1] for r in rows)
        print(f"{hands.taps} taps, {len(done)} events, {len(rows)} lines of the record")
        one.kill()
    print("1 passed, 0 failed")


if __name__ == "__main__":
    main(sys.argv[1])
