#!/usr/bin/env python3
"""What `bastewright export` writes, read by parsers that had no part in writing it.

Usage: exchange_test.py PROGRAM DEMO_FOLDER
"""

import csv
import datetime
import json
import os
import pathlib
import shutil
import struct
import subprocess
import sys
import tempfile
import unittest
import xml.etree.ElementTree

PROGRAM = sys.argv[1]
DEMO = pathlib.Path(sys.argv[2])
DAY = "2026-12-05"


def export(job, folder, *more):
    return subprocess.run([PROGRAM, "export", str(job), "--out", str(folder), *more],
                          capture_output=True, text=True, timeout=120)


def zone_for_people(zone):
    """A zone as people read it, without the pass that it has in files: A2 for p1.A2."""
    return zone.split(".", 1)[-1]


def unfolded(data):
    """The content lines of a calendar (RFC 5545, 3.1), the form of every physical line checked."""
    assert data.endswith(b"\r\n")
    physical = data.split(b"\r\n")[:-1]
    lines = []
    for line in physical:
        assert len(line) <= 75, line
        assert b"\r" not in line and b"\n" not in line, line
        line.decode("utf-8")  # folded between characters, not inside one
        if line[:1] in (b" ", b"\t"):
            lines[-1] += line[1:]
        else:
            lines.append(line)
    return [line.decode("utf-8") for line in lines]


def unescaped(text):
    """RFC 5545, 3.3.11; anything else after a backslash is an error."""
    out, rest = "", text
    while rest:
        if rest[0] == "\\":
            out += {"n": "\n", "N": "\n", "\\": "\\", ";": ";", ",": ","}[rest[1]]
            rest = rest[2:]
        else:
            assert rest[0] not in ";,", text
            out, rest = out + rest[0], rest[1:]
    return out


def events(lines):
    assert lines[0] == "BEGIN:VCALENDAR" and lines[-1] == "END:VCALENDAR"
    names = [line.split(":", 1)[0] for line in lines]
    for once in ("VERSION", "PRODID"):  # 3.6
        assert names.count(once) == 1, once
    found, event = [], None
    for line in lines[1:-1]:
        name, value = line.split(":", 1)
        if line == "BEGIN:VEVENT":
            event = {}
        elif line == "END:VEVENT":
            for needed in ("UID", "DTSTAMP", "DTSTART"):  # 3.6.1
                assert needed in event, needed
            found.append(event)
            event = None
        elif event is not None:
            assert name not in event, name
            event[name] = value
    assert event is None
    assert len({e["UID"] for e in found}) == len(found)
    return found


class Exported(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.temporary = tempfile.TemporaryDirectory()
        cls.addClassCleanup(cls.temporary.cleanup)
        cls.folder = pathlib.Path(cls.temporary.name)
        cls.job = json.loads((DEMO / "harbour-lights.json").read_text())
        # Names that need every rule of quoting, folding and escaping.
        cls.names = ['Ada "the lead", really', "Bo; of \\ the marsh", "Zoë Łuczak-Østergaard 🧵 " * 2,
                     "שלום בן דוד"]
        for helper, name in zip(cls.job["helpers"], cls.names):
            helper["name"] = name.strip()
        cls.names = [name.strip() for name in cls.names]
        path = cls.folder / "job.json"
        path.write_text(json.dumps(cls.job))
        cls.out = cls.folder / "out"
        done = export(path, cls.out, "--day", DAY)
        assert done.returncode == 0, done.stderr
        cls.written = [pathlib.Path(line) for line in done.stdout.splitlines()]
        cls.plan = json.loads((cls.out / "harbour-lights-plan.json").read_text())

    def rows(self, name):
        path = self.out / f"harbour-lights-{name}.csv"
        data = path.read_bytes()
        # RFC 4180, 2, rules 1 and 2: every record ends in CR LF, and no other line break stands bare.
        self.assertTrue(data.endswith(b"\r\n"))
        self.assertEqual(data.count(b"\n"), data.count(b"\r\n"))
        with open(path, encoding="utf-8", newline="") as file:
            rows = list(csv.reader(file, strict=True))
        for row in rows:  # rule 4
            self.assertEqual(len(row), len(rows[0]))
        return [dict(zip(rows[0], row)) for row in rows[1:]]

    def test_every_file_told_is_there(self):
        self.assertEqual(sorted(self.written), sorted(self.out.iterdir()))
        passes = len(self.plan["passes"])
        self.assertEqual(len(self.written), 5 + 2 * passes)

    def test_the_plan_is_the_plan_and_keeps_the_rules(self):
        path = self.folder / "plan.json"
        subprocess.run([PROGRAM, "plan", self.folder / "job.json", "--json", path], check=True,
                       capture_output=True, timeout=120)
        shown = json.loads(path.read_text())
        shown.pop("help")  # asked for where a person reads the plan
        # What the sentences are made of: those of the help are among them only there.
        parts = shown.pop("sentences")
        plan = {k: v for k, v in self.plan.items() if k not in ("help", "sentences")}
        self.assertEqual(plan, shown)
        for part in self.plan["sentences"]:
            self.assertIn(part, parts)
        done = subprocess.run([PROGRAM, "check", self.folder / "job.json",
                               self.out / "harbour-lights-plan.json"], capture_output=True, text=True,
                              timeout=120)
        self.assertEqual(done.returncode, 0, done.stderr)

    def test_bring_list(self):
        rows = self.rows("bring")
        self.assertEqual([(r["item"], float(r["need"]), float(r["have"]), float(r["buy"]), r["unit"])
                          for r in rows],
                         [(s["item"], s["need"], s["have"], s["buy"], s["unit"])
                          for s in self.plan["supplies"]])

    def test_crew_list(self):
        rows = self.rows("crew")
        self.assertEqual([r["name"] for r in rows], self.names)
        for row, helper in zip(rows, self.job["helpers"]):
            self.assertEqual(float(row["reach"]), helper.get("reach", 27))
            self.assertEqual(row["until"], helper.get("until", ""))
            self.assertEqual(row["trouble_breathing"], "yes" if helper.get("trouble_breathing") else "no")

    def test_everybodys_tasks(self):
        start = datetime.datetime.strptime(self.job["start"], "%H:%M")
        expected = [(person, (start + datetime.timedelta(seconds=t["start"])).strftime("%H:%M"),
                     t["kind"], zone_for_people(t.get("zone", "")))
                    for t in self.plan["tasks"] for person in t["people"]]
        rows = self.rows("tasks")
        self.assertEqual([(r["person"], r["start"], r["task"], r["zone"]) for r in rows if r["task"] != "break"],
                         expected)
        breaks = [(person, (start + datetime.timedelta(seconds=b["start"])).strftime("%H:%M"),
                   (start + datetime.timedelta(seconds=b["end"])).strftime("%H:%M"))
                  for b in self.plan.get("breaks", []) for person in b.get("people") or self.names]
        self.assertEqual([(r["person"], r["start"], r["end"]) for r in rows if r["task"] == "break"], breaks)
        self.assertEqual([r["start"] for r in rows], sorted(r["start"] for r in rows))

    def test_calendar(self):
        found = events(unfolded((self.out / "harbour-lights-session.ics").read_bytes()))
        breaks = self.plan.get("breaks", [])
        self.assertEqual(len(found), 1 + len(self.names) + len(breaks))
        start = datetime.datetime.fromisoformat(f"{DAY}T{self.job['start']}")
        end = start + datetime.timedelta(seconds=self.plan["finish"])
        local = "%Y%m%dT%H%M%S"
        self.assertEqual(found[0]["DTSTART"], start.strftime(local))
        self.assertEqual(found[0]["DTEND"], end.strftime(local))
        self.assertIn("Harbour Lights", unescaped(found[0]["SUMMARY"]))
        for event, name in zip(found[1:], self.names):
            self.assertTrue(unescaped(event["SUMMARY"]).startswith(name), event["SUMMARY"])
            self.assertLessEqual(start, datetime.datetime.strptime(event["DTSTART"], local))
            self.assertGreaterEqual(end, datetime.datetime.strptime(event["DTEND"], local))
        for event, b in zip(found[1 + len(self.names):], breaks):
            self.assertEqual(event["DTSTART"], (start + datetime.timedelta(seconds=b["start"])).strftime(local))
            self.assertEqual(event["DTEND"], (start + datetime.timedelta(seconds=b["end"])).strftime(local))
        for event in found:
            datetime.datetime.strptime(event["DTSTAMP"], "%Y%m%dT%H%M%SZ")

    def test_pictures(self):
        for svg in self.out.glob("*.svg"):
            root = xml.etree.ElementTree.parse(svg).getroot()
            self.assertEqual(root.tag, "{http://www.w3.org/2000/svg}svg")
            number = int(svg.stem.rsplit("-", 1)[1])
            text = "".join(root.itertext())
            for zone in self.plan["passes"][number - 1]["zones"]:
                self.assertIn(zone_for_people(zone), text)
                self.assertNotIn(zone, text)
            if shutil.which("xmllint"):
                done = subprocess.run(["xmllint", "--noout", "--nonet", svg], capture_output=True)
                self.assertEqual((done.returncode, done.stderr), (0, b""))
            if shutil.which("rsvg-convert"):
                done = subprocess.run(["rsvg-convert", svg], capture_output=True)
                self.assertEqual(done.returncode, 0, done.stderr)
                self.assertGreater(len(done.stdout), 2000)
        for png in self.out.glob("*.png"):
            head = png.read_bytes()[:24]
            self.assertEqual(head[:8], b"\x89PNG\r\n\x1a\n")  # ISO/IEC 15948, 5.2
            width, height = struct.unpack(">II", head[16:24])
            self.assertGreater(min(width, height), 500)

    @unittest.skipUnless(shutil.which("xmllint") and shutil.which("rsvg-convert"),
                         "SKIPPED: xmllint or rsvg-convert is missing")
    def test_the_parsers_are_there(self):
        pass


class Session(unittest.TestCase):
    def test_the_files_of_its_first_quilt_alone_stay(self):
        session = json.loads((DEMO / "winter-afternoon.json").read_text())
        alone = {**session, "jobs": session["jobs"][:1]}
        with tempfile.TemporaryDirectory() as folder:
            folder = pathlib.Path(folder)
            (folder / "alone.json").write_text(json.dumps(alone))
            written = []
            for file in (folder / "alone.json", DEMO / "winter-afternoon.json"):
                done = export(file, folder / "out", "--day", DAY)
                self.assertEqual(done.returncode, 0, done.stderr)
                written.append(set(done.stdout.splitlines()))
            self.assertEqual(written[0] & written[1], set())
            self.assertIn(str(folder / "out" / f"lantern-walk-and-{len(session['jobs']) - 1}-more-plan.json"),
                          written[1])


class Refused(unittest.TestCase):
    def test_one_sentence(self):
        demo = DEMO / "harbour-lights.json"
        with tempfile.TemporaryDirectory() as folder:
            taken = pathlib.Path(folder) / "file"
            taken.write_text("")
            for arguments, word in [((demo, folder, "--day", "tomorrow"), "tomorrow"),
                                    ((demo, taken), "cannot be made"),
                                    ((pathlib.Path(folder) / "none.json", folder), "none.json")]:
                with self.subTest(arguments):
                    done = export(*arguments)
                    self.assertEqual(done.returncode, 2, done.stderr)
                    self.assertIn(word, done.stderr)
                    self.assertEqual(done.stdout, "")


if __name__ == "__main__":
    os.environ.setdefault("XDG_RUNTIME_DIR", tempfile.mkdtemp())
    unittest.main(argv=sys.argv[:1], verbosity=2)
