#!/usr/bin/env python3
"""Installs the program into a folder and uses it from there, as a desktop and a person would.

Usage: installed_test.py BUILD_FOLDER SOURCE_FOLDER VERSION
"""

import gzip
import json
import os
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile
import unittest

BUILD, SOURCE = map(pathlib.Path, sys.argv[1:3])
VERSION = sys.argv[3]


def run(*command, **options):
    return subprocess.run([str(part) for part in command], capture_output=True, text=True, timeout=120, **options)


class Installed(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        folder = tempfile.TemporaryDirectory()
        cls.addClassCleanup(folder.cleanup)
        cls.folder = pathlib.Path(folder.name)
        cls.prefix = cls.folder / "usr"
        done = run("cmake", "--install", BUILD, "--prefix", cls.prefix)
        assert done.returncode == 0, done.stdout + done.stderr
        cls.program = cls.prefix / "bin/bastewright"
        cls.share = cls.prefix / "share"
        cls.example = cls.share / "doc/bastewright/examples/harbour-lights.bastewright.json"
        cls.home = cls.folder / "home"
        cls.home.mkdir(mode=0o700)
        cls.environment = {"PATH": os.environ["PATH"], "HOME": str(cls.home), "LC_ALL": "C.UTF-8",
                           "XDG_RUNTIME_DIR": str(cls.home), "QT_QPA_PLATFORM": "offscreen",
                           "QT_QUICK_BACKEND": "software"}

    def call(self, *arguments, code=0):
        done = run(self.program, *arguments, env=self.environment, cwd=self.home)
        self.assertEqual(done.returncode, code, done.stdout + done.stderr)
        return done.stdout

    def accepted(self, *command, **options):
        done = run(*command, **options)
        self.assertEqual(done.returncode, 0, done.stdout + done.stderr)
        return done.stdout

    def test_it_plans_and_prints(self):
        plan = self.home / "plan.json"
        self.assertIn("Harbour Lights", self.call("plan", self.example, "--json", plan))
        self.assertEqual(json.loads(plan.read_text())["format"], "bastewright-plan")
        self.call("check", self.example, plan)
        written = self.call("sheets", self.example, "--out", self.home / "sheets", "--with", "cards").split()
        self.assertEqual(len(written), 2)
        for file in map(pathlib.Path, written):
            self.assertEqual(file.read_bytes()[:5], b"%PDF-")

    def test_every_screen_opens_and_nothing_is_left_behind(self):
        before = sorted(self.home.rglob("*"))
        self.call("--self-test")
        left = [path for path in sorted(self.home.rglob("*")) if path not in before and ".cache" not in path.parts]
        self.assertEqual([path.name for path in left if "plan.json" != path.name and "sheets" not in path.parts], [])

    def test_what_prints_is_opened_from_where_it_is_installed(self):
        libraries = list(self.prefix.rglob("bastewright-printing.so"))
        self.assertEqual([file.parent.name for file in libraries], ["bastewright"])
        self.assertNotIn("libcups", self.accepted("ldd", self.program))
        self.assertIn("libcups", self.accepted("ldd", libraries[0]))
        away = libraries[0].with_suffix(".away")
        libraries[0].rename(away)
        try:
            done = run(self.program, "--self-test", env=self.environment, cwd=self.home)
        finally:
            away.rename(libraries[0])
        self.assertEqual(done.returncode, 1)
        self.assertRegex(done.stderr, rf"(?m)^.*{re.escape(str(libraries[0]))} is missing\..*$")

    def test_the_version_is_that_of_the_project(self):
        lines = self.call("--version").splitlines()
        self.assertEqual(lines[0], f"bastewright {VERSION}")
        for beginning in ("commit ", "built as Release with GNU 12", "Qt 6.", "SQLite 3."):
            self.assertTrue(any(line.startswith(beginning) for line in lines), f"{beginning} in {lines}")
        changelog = gzip.open(self.share / "doc/bastewright/changelog.gz", "rt").read()
        self.assertTrue(changelog.startswith(f"bastewright ({VERSION}) "))
        self.assertIn(f'version="{VERSION}"', (self.share / "metainfo/bastewright.metainfo.xml").read_text())

    def test_nothing_points_at_where_it_was_built(self):
        for file in self.prefix.rglob("*"):
            if file.is_file():
                content = file.read_bytes()
                for place in {SOURCE.resolve(), BUILD.resolve()}:
                    self.assertFalse(os.fsencode(place) + b"/" in content, f"{file.name} names {place}")

    def test_desktop_files_are_valid(self):
        self.accepted("desktop-file-validate", self.share / "applications/bastewright.desktop")
        self.accepted("appstreamcli", "validate", "--no-net", self.share / "metainfo/bastewright.metainfo.xml")
        self.accepted("xmllint", "--noout", self.share / "mime/packages/bastewright.xml")
        for size in (48, 128, 256):
            icon = self.share / f"icons/hicolor/{size}x{size}/apps/bastewright.png"
            self.assertEqual(self.accepted("identify", "-format", "%w %h", icon), f"{size} {size}")

    def test_a_desktop_knows_a_job_by_its_ending(self):
        data = self.folder / "data"
        shutil.copytree(self.share / "mime", data / "mime")
        for file in pathlib.Path("/usr/share/mime/packages").glob("freedesktop.org.xml"):
            shutil.copy(file, data / "mime/packages")
        self.accepted("update-mime-database", data / "mime")
        known = (data / "mime/globs2").read_text()
        self.assertIn("application/x-bastewright-job:*.bastewright.json", known)
        self.assertIn("application/json:*.json", known)
        entry = (self.share / "applications/bastewright.desktop").read_text()
        self.assertIn("MimeType=application/x-bastewright-job;", entry)
        self.assertRegex(entry, r"(?m)^Exec=bastewright %f$")

    def test_the_manual_has_what_the_help_has(self):
        help_text = self.call("--help")
        manual = gzip.open(self.share / "man/man1/bastewright.1.gz", "rt").read()
        plain = re.sub(r"\\f[BIRP]|^\.\w+ ?", "", manual.replace(r"\-", "-"), flags=re.MULTILINE)
        plain = re.sub(r'[" ]+', " ", plain)
        options = set(re.findall(r"--[a-z-]+", help_text))
        for command in ("plan", "sheets", "export", "check"):
            self.assertRegex(help_text, rf"(?m)^  bastewright {command} ")
            self.assertRegex(plain, rf"(?m)^bastewright {command}$")
            options |= set(re.findall(r"--[a-z]+", self.call(command, "--help"))) - {"--help-all"}
        described = plain[plain.index("\nOPTIONS"):]
        for option in sorted(options):
            self.assertRegex(described, rf"(?m)^{option}\b", f"{option} is not described")
        for option in set(re.findall(r"(?m)^(--[a-z-]+)", described)):
            self.assertIn(option, options, f"{option} is described, but not known")
        status = plain[plain.index("\nEXIT STATUS"):plain.index("\nFILES")]
        promised = help_text[help_text.index("Exit status: "):]
        for code, words in ((0, "good"), (1, "no good plan"), (2, "bad input")):
            self.assertIn(f"{code} {words}", promised)
            self.assertRegex(status.lower(), rf"(?m)^{code}\n{words}")

    def test_bash_completes_commands_options_and_jobs(self):
        (self.home / "quilt.bastewright.json").touch()
        (self.home / "quilt.txt").touch()
        script = (f"source '{self.share}/bash-completion/completions/bastewright'; "
                  "COMP_WORDS=(\"$@\"); COMP_CWORD=$(($# - 1)); _bastewright; printf '%s\\n' \"${COMPREPLY[@]}\"")

        def completed(*words):
            return self.accepted("bash", "-c", script, "bash", *words, cwd=self.home).split()

        self.assertEqual(completed("bastewright", "pl"), ["plan"])
        self.assertEqual(completed("bastewright", "sheets", "quilt.bastewright.json", "--pa"), ["--paper"])
        self.assertEqual(completed("bastewright", "sheets", "x", "--paper", "l"), ["letter"])
        self.assertEqual(completed("bastewright", "plan", "qu"), ["quilt.bastewright.json"])
        for command in ("plan", "sheets", "export", "check"):
            known = set(re.findall(r"--[a-z]+", self.call(command, "--help"))) - {"--help-all"}
            offered = completed("bastewright", command, "quilt.bastewright.json", "--")
            self.assertTrue(set(offered) <= known, f"{command}: {offered}")
            self.assertIn(command, completed("bastewright", ""))


class Package(unittest.TestCase):
    """The Debian package, not compressed, which takes longest."""

    @classmethod
    def setUpClass(cls):
        folder = tempfile.TemporaryDirectory()
        cls.addClassCleanup(folder.cleanup)
        done = run("cpack", "--config", BUILD / "CPackConfig.cmake", "-B", folder.name,
                   "-D", "CPACK_DEBIAN_COMPRESSION_TYPE=none")
        assert done.returncode == 0, done.stdout + done.stderr
        (cls.file,) = pathlib.Path(folder.name).glob("*.deb")

    def field(self, name):
        return run("dpkg-deb", "--field", self.file, name).stdout.strip()

    def test_it_depends_on_what_is_linked_and_on_what_is_loaded(self):
        depends = self.field("Depends")
        for package in ("libqt6gui6", "libsqlite3-0", "libcups2", "qml6-module-qtquick-dialogs", "fonts-noto-core"):
            self.assertRegex(depends, rf"(^|, ){package}\b")
        listed = re.search(r"run_packages=\(([^)]*)\)", (SOURCE / "src/packages.sh").read_text()).group(1).split()
        self.assertTrue(set(listed) <= set(depends.split(", ")))
        self.assertEqual(self.field("Version"), VERSION)

    def test_it_holds_the_same_files_as_an_installation(self):
        listing = run("dpkg-deb", "--contents", self.file).stdout
        for file in ("bin/bastewright", "lib/bastewright/bastewright-printing.so", "share/man/man1/bastewright.1.gz", "share/doc/bastewright/copyright",
                     "share/doc/bastewright/changelog.gz", "share/mime/packages/bastewright.xml"):
            self.assertRegex(listing, rf"(?m)^-\S+ root/root .* \./usr/{file}$")
        self.assertNotRegex(listing, r"(?m)\./(?!usr/)\S+")


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1], verbosity=2)
