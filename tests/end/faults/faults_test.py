#!/usr/bin/env python3
"""Provokes faults of files from outside and looks at what the person is told and what is left: a full
disk, a death in the middle of writing, folders and files without rights, hostile job files.

Usage: faults_test.py PROGRAM
"""

import csv
import json
import os
import pathlib
import re
import resource
import signal
import subprocess
import sys
import tempfile
import unittest
from xml.etree import ElementTree

PROGRAM = sys.argv[1]
NOBODY = 65534
SMALL = {"name": "Ebb", "top": {"width": 30, "length": 30}, "room": {"tables": [{}]},
         "helpers": [{"name": "Ada"}], "stash": {"pins": 100}}


def run(*arguments, prepare=None, **options):
    return subprocess.run([PROGRAM, *map(str, arguments)], capture_output=True, text=True, timeout=120,
                          preexec_fn=prepare, **options)


def files_end_at(size, fatal):
    """No file can grow beyond so many bytes: writing fails, or ends the process then and there."""
    def prepare():
        signal.signal(signal.SIGXFSZ, signal.SIG_DFL if fatal else signal.SIG_IGN)
        resource.setrlimit(resource.RLIMIT_FSIZE, (size, size))
        resource.setrlimit(resource.RLIMIT_CORE, (0, 0))
    return prepare


def as_somebody_else():
    if os.geteuid() == 0:
        os.setgid(NOBODY)
        os.setuid(NOBODY)


class InFolder(unittest.TestCase):
    def setUp(self):
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.folder = pathlib.Path(folder.name)
        self.folder.chmod(0o755)
        self.job = self.write(SMALL, "small.json")

    def write(self, content, name="job.json"):
        path = self.folder / name
        if isinstance(content, bytes):
            path.write_bytes(content)
        else:
            path.write_text(content if isinstance(content, str) else json.dumps(content))
        return path

    def says_one_sentence(self, done, *words):
        self.assertEqual(done.returncode, 2, done.stdout + done.stderr)
        lines = [line for line in done.stderr.splitlines() if line.strip()]
        self.assertEqual(len(lines), 1, done.stderr)
        self.assertTrue(lines[0].startswith("stop: ") and lines[0].endswith("."), lines[0])
        for word in words:
            self.assertIn(word, lines[0])


class Writing(InFolder):
    """The sheets, the files for other programs, and the plan: all of a file or nothing."""

    COMMANDS = {"sheets": ["--out"], "export": ["--out"], "plan": ["--json"]}

    def command(self, name, out, prepare=None):
        where = out / "plan.json" if name == "plan" else out
        return run(name, self.job, *self.COMMANDS[name], where, prepare=prepare)

    def test_a_full_disk_leaves_nothing_half_written(self):
        for name in self.COMMANDS:
            with self.subTest(name):
                out = self.folder / f"full-{name}"
                out.mkdir()
                self.says_one_sentence(self.command(name, out, files_end_at(3000, fatal=False)), str(out))
                for file in out.iterdir():
                    self.assertLessEqual(file.stat().st_size, 3000, "only whole small ones")
                    self.assertNotRegex(file.name, r"\.[A-Za-z]{6}$", "no leftovers")

    def test_a_death_in_the_middle_leaves_what_was_there(self):
        for name in self.COMMANDS:
            with self.subTest(name):
                out = self.folder / f"death-{name}"
                out.mkdir()
                self.assertEqual(self.command(name, out).returncode, 0)
                before = {file.name: file.read_bytes() for file in out.iterdir()}
                done = self.command(name, out, files_end_at(3000, fatal=True))
                self.assertEqual(done.returncode, -signal.SIGXFSZ, done.stderr)
                for file, content in before.items():
                    now = (out / file).read_bytes()
                    if len(now) > 3000 or now != content:
                        self.assertEqual(len(now), len(content), file)
                        self.assertEqual(now[-64:].count(b"%%EOF"), content[-64:].count(b"%%EOF"), file)

    def test_a_folder_that_may_not_be_written_is_said(self):
        out = self.folder / "locked"
        out.mkdir(mode=0o555)
        home = self.folder / "home"
        home.mkdir(mode=0o700)
        if os.geteuid() == 0:
            os.chown(home, NOBODY, NOBODY)
        for name in self.COMMANDS:
            with self.subTest(name):
                where = out / "plan.json" if name == "plan" else out
                done = run(name, self.job, *self.COMMANDS[name], where, prepare=as_somebody_else,
                           env=os.environ | {"HOME": str(home), "XDG_RUNTIME_DIR": str(home)})
                self.says_one_sentence(done, "locked")
                self.assertEqual(list(out.iterdir()), [])

    def test_a_file_where_the_folder_should_be_is_said(self):
        out = self.write("a note", "sheets")
        for name in ("sheets", "export"):
            with self.subTest(name):
                self.says_one_sentence(run(name, self.job, "--out", out), str(out))
                self.assertEqual(out.read_text(), "a note")


class Reading(InFolder):
    """What somebody else sends."""

    def test_a_file_without_the_right_to_read_it_is_said(self):
        job = self.write(SMALL)
        job.chmod(0)
        self.says_one_sentence(run("plan", job, prepare=as_somebody_else), str(job), "may open it")

    def test_what_is_no_ordinary_file_is_said_at_once(self):
        pipe = self.folder / "pipe"
        os.mkfifo(pipe)
        link = self.folder / "link"
        link.symlink_to(self.folder / "nowhere")
        loop = self.folder / "loop"
        loop.symlink_to(loop)
        for path in (pipe, "/dev/zero", self.folder, link, loop, self.folder / "gone"):
            with self.subTest(path):
                self.says_one_sentence(run("plan", path), str(path))
        plan = self.write("{}", "plan.json")
        for path in (pipe, "/dev/zero", self.folder, self.folder / "gone"):
            with self.subTest(check=path):
                self.says_one_sentence(run("check", self.job, path), str(path))
        self.assertEqual(run("check", self.job, plan).returncode, 2)

    def test_hostile_files_are_refused_within_little_memory_and_time(self):
        def little():
            # AddressSanitizer maps terabytes for itself, and takes several times as long.
            if "BASTEWRIGHT_SANITIZED" in os.environ:
                resource.setrlimit(resource.RLIMIT_CPU, (200, 200))
                return
            resource.setrlimit(resource.RLIMIT_AS, (2_000_000_000, 2_000_000_000))
            resource.setrlimit(resource.RLIMIT_CPU, (20, 20))

        multiply = '"x"'
        for _ in range(28):
            multiply = '["' + "%1" * 9 + '", ' + multiply + "]"
        plan = {"format": "bastewright-plan", "version": 1, "unit": "in", "tasks": [], "finish": 0}
        multiplied = json.dumps(plan)[:-1] + ', "sentences": [' + multiply + "]}"
        jobs = {
            "large": b" " * 40_000_000,
            "deep": b'{"top":' + b"[" * 3_900_000,
            "many": b'{"top": {"seams": [' + b"{}," * 1_300_000 + b"{}]}}",
            "unknown": b'{"top": {"width": 60, "length": 72}, "x": [' + b"0," * 990_000 + b"0]}",
            "digits": b'{"top": {"width": ' + b"9" * 3_900_000 + b', "length": 1}}',
            "texts": b'{"top": {"width": "' + b"1" * 3_900_000 + b'", "length": 1}}',
            "not text": bytes(range(256)) * 4000,
        }
        for name, content in jobs.items():
            with self.subTest(name):
                done = run("plan", self.write(content), prepare=little)
                if name != "unknown":  # those are kept, with a warning
                    self.assertEqual(done.returncode, 2, done.stderr[:500])
                else:
                    self.assertIn("not a field this version knows", done.stderr)
                self.assertLess(len(done.stderr), 100_000)
        for name, content in {"multiplied": multiplied, "large": " " * 70_000_000}.items():
            with self.subTest(plan=name):
                done = run("check", self.job, self.write(content, "plan.json"), prepare=little)
                self.assertEqual(done.returncode, 2, done.stderr[:500])


class Names(InFolder):
    """Names from a file become names of files, and text in files of others: nothing more."""

    NAMES = ["../../escaped", "/etc/escaped", "..", "a/../../b", "C:\\escaped", "~/escaped", "-rf", "\u202ex.a"]

    def test_no_name_leads_out_of_the_folder(self):
        for number, name in enumerate(self.NAMES):
            inside = self.folder / f"{number}" / "in" / "side"
            inside.mkdir(parents=True)
            job = self.write(SMALL | {"name": name})
            for command in ("sheets", "export") if number < 2 else ("export",):
                with self.subTest(name, command=command):
                    done = run(command, job, "--out", inside, cwd=inside)
                    self.assertEqual(done.returncode, 0, done.stderr)
            every = [p for p in (self.folder / f"{number}").rglob("*") if p.is_file()]
            self.assertGreater(len(every), 5)
            for file in every:
                self.assertEqual(file.parent, inside)
                self.assertRegex(file.name[0], r"\w")

    def test_no_cell_is_a_formula_and_no_text_is_markup(self):
        evil = ["=HYPERLINK(\"http://x\")", "+1", "-1", "@SUM(A1)", "<b onload='x'>&\"]]>"]
        job = self.write(SMALL | {"name": "<script>=1</script>&",
                                  "helpers": [{"name": name} for name in evil]})
        self.assertEqual(run("export", job, "--out", self.folder).returncode, 0)
        for path in self.folder.glob("*.csv"):
            with path.open(newline="", encoding="utf-8") as file:
                for row in csv.reader(file):
                    for cell in row:
                        if re.fullmatch(r"-?[0-9.]+", cell) is None:
                            self.assertNotRegex(cell, r"^[=+\-@\t\r]", path.name)
        crew = next(self.folder.glob("*-crew.csv")).read_text()
        self.assertIn("'@SUM(A1)", crew)
        drawn = list(self.folder.glob("*.svg"))
        self.assertGreater(len(drawn), 0)
        for path in drawn:
            kinds = {element.tag.split("}")[-1] for element in ElementTree.parse(path).iter()}
            self.assertFalse(kinds & {"script", "foreignObject", "b", "a", "image", "use"}, kinds)
            self.assertNotIn("onload", path.read_text())


if __name__ == "__main__":
    os.environ.setdefault("XDG_RUNTIME_DIR", tempfile.mkdtemp())
    unittest.main(argv=sys.argv[:1], verbosity=2)
