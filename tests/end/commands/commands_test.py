#!/usr/bin/env python3
"""Drives the built program from outside: plan, check and sheets of the demo jobs, and bad input.

Usage: commands_test.py PROGRAM DEMO_FOLDER
"""

import copy
import json
import os
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile
import unicodedata
import unittest
from fractions import Fraction

PROGRAM = sys.argv[1]
DEMO = pathlib.Path(sys.argv[2])
DEMOS = ["harbour-lights", "leftover-batting", "winter-afternoon", "winter-thread"]


def run(*arguments, **options):
    return subprocess.run([PROGRAM, *map(str, arguments)], capture_output=True, text=True,
                          timeout=120, **options)


def zone_for_people(zone):
    """A zone as people read it, without the pass that it has in files: A2 for p1.A2."""
    return zone.split(".", 1)[-1]


def quilts(plan):
    return plan.get("quilts", [plan])


def figure_of(supply, unit):
    """How many of a supply: yards and inches in eighths, as they are cut; the rest as counted."""
    need = supply["need"]
    if unit != "in" or supply["kind"] not in ("fabric", "batting-roll", "tape", "joining-strip"):
        return f"{need:.4g}"
    whole, part = divmod(Fraction(round(need * 8), 8), 1)
    return f"{whole} {part}" if whole and part else f"{part if part else whole}"


def spelled(text):
    """Signs of fractions as the plan's file has them: "4½" as "4 1/2"."""
    for sign, parts in zip("⅛¼⅜½⅝¾⅞", ("1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8")):
        text = re.sub(rf"(?<=\d){sign}", f" {parts}", text).replace(sign, parts)
    return text


class InFolder(unittest.TestCase):
    def setUp(self):
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.folder = pathlib.Path(folder.name)

    def write(self, content, name="job.json"):
        path = self.folder / name
        path.write_text(content if isinstance(content, str) else json.dumps(content))
        return path


class MainJob(InFolder):
    """Plan, check and print each demo, as a person would."""

    def plan(self, demo, *more):
        path = self.folder / f"{demo}.plan.json"
        done = run("plan", DEMO / f"{demo}.json", "--json", path, *more)
        self.assertEqual(done.returncode, 0, done.stdout + done.stderr)
        return done.stdout, json.loads(path.read_text()), path

    def test_a_plan_says_what_was_compared_and_why(self):
        text, _, _ = self.plan("harbour-lights", "--all")
        for words in ("Ways compared", "centered", "beside the middle", "length along", "length across",
                      "2 tables end to end", "2 tables side by side", "quickest of"):
            self.assertIn(words, text)

    def test_the_checker_passes_every_demo(self):
        for demo in DEMOS:
            with self.subTest(demo):
                _, _, path = self.plan(demo)
                done = run("check", DEMO / f"{demo}.json", path)
                self.assertEqual(done.returncode, 0, done.stdout + done.stderr)

    def test_the_checker_catches_a_spoiled_plan_file(self):
        _, plan, _ = self.plan("harbour-lights")
        zone = next(z for z in plan["zones"] if len(z["points"]) > 2)
        zone["points"].pop()
        done = run("check", DEMO / "harbour-lights.json", self.write(plan, "spoiled.json"))
        self.assertEqual(done.returncode, 1)
        # Where in the file, what is wrong there, and what the rule asks, in one line each.
        lines = done.stderr.splitlines()
        for line in lines:
            self.assertRegex(line, r"^stop: /[^ ]+: .+\. \([a-z]+\.[a-z]+: [^.]+\)$")
        self.assertTrue(any(re.match(r"stop: /zones.* \(points\.", line) for line in lines), done.stderr)

    def test_a_file_of_another_kind_is_one_finding(self):
        _, _, plan = self.plan("harbour-lights")
        job = DEMO / "harbour-lights.json"
        for files, accepted in [((plan, job), "bastewright-job"), ((job, job), "bastewright-plan")]:
            with self.subTest(files):
                done = run("check", *files)
                self.assertEqual(done.returncode, 2)
                self.assertEqual(len(done.stderr.splitlines()), 1, done.stderr)
                self.assertIn("/format", done.stderr)
                self.assertIn(accepted, done.stderr)

    def test_the_same_job_gives_the_same_plan(self):
        _, _, first = self.plan("harbour-lights")
        text = first.read_bytes()
        self.plan("harbour-lights")
        self.assertEqual(text, first.read_bytes())

    def test_what_matters_is_on_one_screen(self):
        """80 columns, 24 lines: when it ends, every pass with its pins, what to bring and what to check."""
        for demo in DEMOS:
            with self.subTest(demo):
                text, plan, _ = self.plan(demo)
                lines = text.splitlines()
                self.assertLessEqual(len(lines), 24, text)
                self.assertLessEqual(max(map(len, lines)), 80, text)
                said = spelled(" ".join(text.split()))
                self.assertNotRegex(text, r"\d/\d")
                self.assertIn("finishes about ", said)
                for supply in plan["supplies"]:
                    self.assertIn(f"{figure_of(supply, plan['unit'])} ", said)
                    self.assertIn(supply["item"], said)
                for finding in plan["findings"]:
                    if finding["level"] != "note":
                        self.assertIn(finding["text"], said)
                if "quilts" not in plan:
                    for one in plan["passes"]:
                        pins = sum(len(zone["points"]) for zone in plan["zones"] if zone["pass"] == one["number"])
                        self.assertIn(f"pass {one['number']}:", said)
                        self.assertIn(f"{pins} {'stitches' if demo == 'winter-thread' else 'pins'}", said)
                self.assertIn("--all", lines[-1])

    @unittest.skipUnless(shutil.which("pdftotext"), "SKIPPED: pdftotext (poppler-utils) is missing")
    def test_sheets_name_everybody_and_cards_every_zone(self):
        for demo in DEMOS:
            with self.subTest(demo):
                _, plan, _ = self.plan(demo)
                out = self.folder / f"sheets-{demo}"
                done = run("sheets", DEMO / f"{demo}.json", "--out", out, "--paper", "letter", "--with", "cards, labels")
                self.assertEqual(done.returncode, 0, done.stderr)
                (cards,) = out.glob("*-cards-letter.pdf")
                (pdf,) = set(out.glob("*.pdf")) - {cards}
                self.assertEqual(done.stdout.split(), [str(pdf), str(cards)])

                def words(path):
                    read = subprocess.run(["pdftotext", "-layout", path, "-"], capture_output=True, text=True)
                    text = unicodedata.normalize("NFKC", read.stdout)
                    return set(text.translate({ord(c): " " for c in ",:.·"}).split())

                zones, people = words(cards), words(pdf)
                for quilt in quilts(plan):
                    for zone in quilt["zones"]:
                        if zone["points"]:
                            self.assertIn(zone_for_people(zone["id"]), zones)
                            self.assertNotIn(zone["id"], zones | people)
                for task in plan["tasks"]:
                    for person in task["people"]:
                        self.assertIn(person, people)

    def test_sheets_without_a_wish_are_the_set_for_an_afternoon(self):
        out = self.folder / "sheets"
        done = run("sheets", DEMO / "harbour-lights.json", "--out", out)
        self.assertEqual(done.returncode, 0, done.stderr)
        self.assertEqual([path.name for path in out.iterdir()], ["harbour-lights-a4.pdf"])
        done = run("sheets", DEMO / "harbour-lights.json", "--out", out, "--with", "everything")
        self.assertEqual(done.returncode, 2)
        self.assertIn("everything", done.stderr)
        self.assertIn("passes, ribbons, cards", done.stderr)


class BadInput(InFolder):
    """One clear sentence each, exit status 2, nothing written."""

    def refused(self, job, *words):
        path = job if isinstance(job, pathlib.Path) else self.write(job)
        out = self.folder / "plan.json"
        before = sorted(self.folder.iterdir())
        done = run("plan", path, "--json", out)
        self.assertEqual(done.returncode, 2, done.stdout + done.stderr)
        for word in words:
            self.assertIn(word, done.stderr)
        stops = [line for line in done.stderr.splitlines() if line.startswith("stop:")]
        self.assertTrue(stops, done.stderr)
        self.assertEqual(done.stdout, "")
        self.assertEqual(sorted(self.folder.iterdir()), before)
        return stops

    def job(self, **changes):
        job = json.loads((DEMO / "harbour-lights.json").read_text())
        job.update(copy.deepcopy(changes))
        return job

    def test_missing_top(self):
        job = self.job()
        del job["top"]
        self.assertEqual(len(self.refused(job, "/top")), 1)

    def test_negative_width(self):
        self.refused(self.job(top={"width": -80, "length": 100}), "/top/width", "-80")

    def test_division_by_zero(self):
        self.refused(self.job(top={"width": "12 1/0 in", "length": 100}), "/top/width", "12 1/0 in")

    def test_four_million_tables(self):
        room = {"tables": [{"length": 72, "width": 30, "count": 4_000_000}]}
        self.refused(self.job(room=room), "/room/tables/0/count", "4000000")

    def test_repeated_helpers(self):
        self.refused(self.job(helpers=[{"name": "Ada"}, {"name": "Ada"}]), "/helpers/1/name", "Ada")

    def test_hours_reversed(self):
        self.refused(self.job(helpers=[{"name": "Ada", "from": "16:00", "until": "13:00"}]),
                     "/helpers/0", "13:00")

    def test_all_problems_are_told_at_once(self):
        stops = self.refused(self.job(top={"width": -1, "length": -1}, basting={"spacing": 0}))
        self.assertGreaterEqual(len(stops), 3)

    def test_not_json(self):
        self.assertEqual(len(self.refused("{ top: 12", "line 1")), 1)

    def test_not_utf8(self):
        path = self.folder / "job.json"
        path.write_bytes(b'{"name": "\xff\xfe"}')
        self.refused(path, "UTF-8")

    def test_a_hundred_megabytes(self):
        path = self.folder / "job.json"
        with open(path, "wb") as file:
            file.truncate(100_000_000)
        self.assertEqual(len(self.refused(path, str(path))), 1)

    def test_a_folder(self):
        path = self.folder / "folder"
        path.mkdir()
        self.assertEqual(len(self.refused(path, str(path), "folder")), 1)

    def test_a_missing_file(self):
        self.assertEqual(len(self.refused(self.folder / "none.json", "none.json")), 1)

    def test_an_unwritable_target(self):
        done = run("plan", DEMO / "harbour-lights.json", "--json", self.folder / "no" / "plan.json")
        self.assertEqual(done.returncode, 2)
        self.assertIn("plan.json", done.stderr)

    def test_options(self):
        demo = DEMO / "harbour-lights.json"
        for arguments, word in [(["plan", demo, "--limit", "soon"], "soon"),
                                (["plan", demo, "--limit", "-5"], "-5"),
                                (["plan"], "job"), (["plan", demo, "--colour"], "colour"),
                                (["plan", demo, demo], "only one"),
                                (["sheets", demo], "--out"),
                                (["sheets", demo, "--out", self.folder, "--paper", "foolscap"], "foolscap"),
                                (["sheets", demo, "--out", ""], "--out"),
                                (["plan", demo, "--paper", "a4"], "--json or --limit or --all is accepted"),
                                (["check", demo, demo, "--gray"], "takes no option"),
                                (["check", demo], "plan file"),
                                (["check", demo, self.folder / "none.json"], "none.json")]:
            with self.subTest(arguments):
                done = run(*arguments)
                self.assertEqual(done.returncode, 2, done.stderr)
                self.assertIn(word, done.stderr)


class WiderThanAnyBatting(InFolder):
    """A quilt wider than any pack or roll is planned with a join."""

    ROOM = {"tables": [{"length": 96, "width": 60}]}

    def plan(self, width, length, **more):
        job = {"format": "bastewright-job", "version": 1, "room": self.ROOM,
               "top": {"width": width, "length": length}, "basting": {"spacing": 6}, **more}
        path, plan = self.write(job), self.folder / "plan.json"
        done = run("plan", path, "--json", plan, "--all")
        self.assertEqual(done.returncode, 0, done.stdout + done.stderr)
        checked = run("check", path, plan)
        self.assertEqual(checked.returncode, 0, checked.stdout + checked.stderr)
        return done.stdout, json.loads(plan.read_text())

    def test_without_a_join_while_there_is_one_so_wide(self):
        _, plan = self.plan(104, 116)
        self.assertEqual(plan["batting"]["joins"], [])
        _, plan = self.plan(104, 116, batting={"overage": 4})
        self.assertEqual(plan["batting"]["joins"], [])
        self.assertEqual(plan["batting"]["buy"][0]["width"], 120)

    def test_with_a_join_beyond(self):
        for side in (120, 130):
            with self.subTest(side):
                text, plan = self.plan(side, side)
                self.assertEqual(len(plan["batting"]["joins"]), 1)
                self.assertIn("off a roll", text)
                self.assertIn("The join takes", text)


class NoGoodPlan(InFolder):
    def test_reason_and_smallest_cure(self):
        job = json.loads((DEMO / "harbour-lights.json").read_text())
        job["room"] = {"tables": [{"length": 24, "width": 12}]}
        done = run("plan", self.write(job))
        self.assertEqual(done.returncode, 1, done.stderr)
        said = " ".join(done.stdout.split())
        self.assertIn("/room/tables", said)
        self.assertIn("Use tables at least", said)

    def test_layers_too_small(self):
        job = json.loads((DEMO / "harbour-lights.json").read_text())
        job["batting"] = {"width": 87, "length": 116}
        done = run("plan", self.write(job))
        self.assertEqual(done.returncode, 1)
        # The readings of this top lean by an eighth.
        self.assertIn("The batting is 87 in wide and the top, which is not square, takes up 88⅛ in",
                      " ".join(done.stdout.split()))


if __name__ == "__main__":
    os.environ.setdefault("XDG_RUNTIME_DIR", tempfile.mkdtemp())
    unittest.main(argv=sys.argv[:1], verbosity=2)
