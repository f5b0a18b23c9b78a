#!/usr/bin/env python3
"""House rules that no compiler enforces. Each prints what breaks it and fails; see DEVELOPERS.md."""

import argparse
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile
from xml.etree import ElementTree

from drawing import drawing as drawn
from words import of_program, said_otherwise

# What each part of src may depend on, directly. Parts not named here may depend on anything.
ALLOWED = {
    "measures": set(),
    "job": {"measures"},
    "plan": {"job"},
    "ways": {"plan"},
    "planner_surface": {"plan", "ways"},
    "planner_rolls": {"plan"},
    "planner_passes": {"ways", "plan", "planner_surface", "planner_rolls"},
    "planner_points": {"ways", "plan"},
    "planner_crew": {"ways", "plan", "planner_passes", "planner_surface"},
    "planner_backing": {"plan"},
    "planner_batting": {"plan"},
    "planner_proof": {"plan"},
    "planner_bring": {"ways", "plan"},
    "planner_whole": {"ways", "plan", "planner_surface", "planner_rolls", "planner_passes",
                      "planner_points", "planner_crew", "planner_backing", "planner_batting", "planner_proof",
                      "planner_bring"},
    "checker": {"plan"},
    "session": {"ways", "plan", "planner_whole", "planner_crew", "planner_passes", "checker"},
    "language": {"measures"},
    "store": {"session"},
    "sheets": {"ways", "language", "plan"},
    "printing": {"sheets"},
    "view": {"session", "store", "sheets", "language", "planner_surface", "planner_passes",
             "planner_rolls", "planner_batting", "planner_bring", "planner_proof", "planner_whole"},
    "page": {"view"},
}
# The rooms of src/view, lowest first: each may include those before it.
ROOMS = ("base", "paint", "edit", "photo", "plan", "table", "paper", "shelf", "room")
CORE = [name for name in ALLOWED
        if name not in ("language", "store", "sheets", "printing", "view", "page")]
# Longest file of each kind; the usual is far less.
LONGEST = {".cpp": 400, ".h": 250, ".qml": 260}


CATALOGUE = "assets/translations/bastewright_de.ts"


def folder(part):
    return pathlib.Path("src") / part.replace("planner_", "planners/")


def part_of(header):
    """The part of src that a header is of; none for those of the system."""
    folders = header.split("/")[:-1]
    if folders[:1] == ["planners"]:
        return "planner_" + folders[1]
    return folders[0] if folders and folders[0] in ALLOWED else None


def within(part):
    """What a part may include: what it may depend on, and, planners apart, what that is made of."""
    parts = {part} | ALLOWED[part]
    for other in sorted(ALLOWED[part]):
        if not other.startswith("planner_"):
            parts |= {p for p in within(other) if not p.startswith("planner_")}
    return parts


def includes(source, _build):
    """No part includes another that is not in this table, and the core no Qt."""
    for part in ALLOWED:
        for file in sorted((source / folder(part)).rglob("*.[ch]*")):
            for number, line in enumerate(file.read_text().splitlines(), 1):
                found = re.match(r'\s*#\s*include\s*[<"]([^>"]+)', line)
                if not found:
                    continue
                header = found.group(1)
                if part in CORE and re.match(r"Q[A-Za-z]|Qt", header):
                    yield f"{file.relative_to(source)}:{number}: the core must not include {header}"
                if (part_of(header) or part) not in within(part):
                    yield f"{file.relative_to(source)}:{number}: {part} must not include {header}"
    for at, room in enumerate(ROOMS):
        for file in sorted((source / "src/view" / room).iterdir()):
            for other in re.findall(r'#\s*include "view/(\w+)/', file.read_text()):
                if other not in ROOMS[: at + 1]:
                    yield f"{file.relative_to(source)}: {room} must not include view/{other}"
    # What phones see is the session's; of the view the page has words, colours and who reports ticks.
    for file in sorted((source / "src/page").glob("*.[ch]*")):
        for header in re.findall(r'#\s*include "(view/.+)"', file.read_text()):
            if not header.startswith(("view/base/", "view/paint/")) and header != "view/table/live_controller.h":
                yield f"{file.relative_to(source)}: page must not include {header}"
    yield from (f"{file.relative_to(source)}: belongs into one of the rooms"
                for file in sorted((source / "src/view").glob("*.[ch]*")))


def links(source, _build):
    """The link graph is the one in this table, and what prints is linked by src/printing alone."""
    for listing in sorted((source / "src").rglob("CMakeLists.txt")):
        if listing.parent.name != "printing":
            for library in re.findall(r"\bPrintSupport\b|\bCups\b", listing.read_text()):
                yield f"{listing.relative_to(source)}: every start would read {library}; it belongs into src/printing"
    for part, allowed in ALLOWED.items():
        listing = source / folder(part) / "CMakeLists.txt"
        text = re.sub(r"#.*", "", listing.read_text())
        for library in sorted(set(re.findall(r"(?<!/)\bbastewright_(\w+)\b", text))):
            if library in ("library", "flags", part):
                continue
            if library not in allowed:
                yield f"{listing.relative_to(source)}: {part} must not depend on {library}"


def symbols(_source, build):
    """No Qt symbol in a core archive."""
    for part in CORE:
        archives = list(build.rglob(f"libbastewright_{part}.a"))
        if not archives:
            yield f"the archive of {part} was not built"
            continue
        names = subprocess.run(["nm", "-C", archives[0]], capture_output=True, text=True).stdout
        for line in names.splitlines():
            if re.search(r"\b(Q[A-Z]\w+::|q_\w+\()", line):
                yield f"{archives[0].name}: {line.strip()}"
                break


def modules(source, _build):
    """Every .qml file on disk is in a module: qml/CMakeLists.txt takes in whole, flat folders."""
    listing = (source / "qml/CMakeLists.txt").read_text()
    for file in sorted((source / "qml").rglob("*.qml")):
        inside = file.relative_to(source / "qml").parent
        if not re.search(rf"^bastewright_qml\({re.escape(str(inside))}\b", listing, re.MULTILINE):
            yield f"{file.relative_to(source)}: its folder is no module of qml/CMakeLists.txt"


def sizes(source, _build):
    """Files stay small enough to read."""
    for top in ("src", "qml"):
        for file in sorted((source / top).rglob("*")):
            most = LONGEST.get(file.suffix)
            if most:
                lines = len(file.read_text().splitlines())
                if lines > most:
                    yield f"{file.relative_to(source)}: {lines} lines, more than {most}"


LUPDATE = "/usr/lib/qt6/bin/lupdate"


def messages(catalogue):
    """Context, English sentence and translation of every entry."""
    for context in ElementTree.parse(catalogue).getroot().iter("context"):
        for message in context.iter("message"):
            yield context.findtext("name"), message.findtext("source"), message.find("translation")


def catalogue(source, build):
    """Every sentence of the sources has a finished translation with the same places."""
    kept = source / CATALOGUE
    with tempfile.TemporaryDirectory() as folder:
        now = pathlib.Path(folder) / kept.name
        shutil.copy(kept, now)
        # As the target `translations` calls it.
        subprocess.run([LUPDATE, "-silent", "-no-obsolete", "-locations", "none",
                        "-tr-function-alias", "tr+=says,tr+=label", source / "src", source / "qml",
                        "-ts", now], check=True, stderr=subprocess.DEVNULL)
        current = {(context, text) for context, text, _ in messages(now)}
    known = {(context, text) for context, text, _ in messages(kept)}
    for context, text in sorted(current - known):
        yield f"not in the catalogue: {context}: {text}"
    for context, text in sorted(known - current):
        yield f"not in the sources any more: {context}: {text}"
    places = re.compile(r"%[1-9n]")
    for context, text, translation in messages(kept):
        said = translation.text or ""
        if translation.get("type") or not said:
            yield f"not translated: {context}: {text}"
        elif set(places.findall(text)) != set(places.findall(said)):
            yield f"other places than in English: {context}: {text}: {said}"
    forms = [(context, text) for context, text, _ in messages(kept) if context == "core"]
    if len(forms) < 300:
        yield f"only {len(forms)} sentences of the core were found"
    # The page for phones has its sentences in {{}} and their list beside the server.
    listed = (source / "src/page/page_words.cpp").read_text()
    for file in ("index.html", "page.js"):
        for text in re.findall(r"{{([^{}]+)}}", (source / "assets/page" / file).read_text()):
            if f'"{text}"' not in listed:
                yield f"assets/page/{file}: not listed in page_words.cpp: {text}"


def words(source, _build):
    """No sentence has a word for which another is said (words.py), in English or German."""
    sentences = [("en", context, text) for context, text, _ in messages(source / CATALOGUE)]
    sentences += [("en", place, text) for place, text in of_program(source)]
    for context, _, translation in messages(source / CATALOGUE):
        forms = [form.text for form in translation.iter("numerusform")] or [translation.text]
        sentences += [("de", context, form or "") for form in forms]
    for language, place, text in sentences:
        for word, instead in said_otherwise(language, text):
            yield f"{place}: '{word}' is not said ({instead}): {text}"


def drawing(source, _build):
    """The picture of the parts is the one that the build gives."""
    if (source / "docs/pictures/parts.svg").read_text() != drawn(source):
        yield "docs/pictures/parts.svg: draw it anew: python3 tests/lint/drawing.py . > docs/pictures/parts.svg"


def documents(source, _build):
    """What documents point at is there, every picture is shown somewhere, and every check has its test."""
    shown = set()
    texts = [source / "README.md", source / "DEVELOPERS.md", *sorted((source / "docs").rglob("*.md"))]
    for file in texts:
        text = file.read_text()
        name = file.relative_to(source)
        for target in re.findall(r"\]\(([^)#]+)(?:#[^)]*)?\)", text):
            if "://" in target:
                continue
            if not (file.parent / target).exists():
                yield f"{name}: points at {target}, which is not there"
            shown.add((file.parent / target).resolve())
        for place in re.findall(r"`((?:src|tests|qml|docs|assets)/[\w/.-]+)`", text):
            if not (source / place).exists():
                yield f"{name}: names {place}, which is not there"
    for picture in sorted((source / "docs/pictures").glob("*.[ps][nv]g")):
        if picture.resolve() not in shown:
            yield f"{picture.relative_to(source)}: no document shows it"


# Where sentences and pointers are written to files, printed and made.
SAID = ("src/measures/", "src/job/", "src/plan/", "src/sheets/exchange/", "src/app/",
        "src/session/event_json.cpp", "src/checker/rules/supplies.cpp")


def identity(source, _build):
    """No code goes by what people read: a sentence in English, or the pointer of a finding."""
    compared = re.compile(
        r"\.english\(\)"
        r"|\bfield\s*(?:[!=]=|\.(?:starts_with|ends_with|find|substr|compare)\b).*(?:\bfield|\")"
        r"|&Finding::(?:field|text|cure)\b"
        r"|[.>](?:text|cure|item|unit|note|change|why|name\(\))\s*[!=]=\s*(?:\"|core::says)"
        r"|\.(?:text|cure|item)\s*[!=]=\s*\w+\.(?:text|cure|item)\b")
    for file in sorted((source / "src").rglob("*.[ch]*")):
        name = str(file.relative_to(source))
        if name.startswith(SAID):
            continue
        for number, line in enumerate(file.read_text().splitlines(), 1):
            if compared.search(line):
                yield f"{name}:{number}: goes by what people read: {line.strip()}"


# Where the ways of basting are named and described; all others ask `wayOf`, the checker `seenWay`.
WAYS = ("src/job/", "src/ways/", "src/checker/ways/")


def ways(source, _build):
    """No code tells ways of basting apart outside their descriptions."""
    for file in sorted((source / "src").rglob("*.[ch]*")):
        name = str(file.relative_to(source))
        if name.startswith(WAYS):
            continue
        for number, line in enumerate(file.read_text().splitlines(), 1):
            if re.search(r"\bWith::\w", line):
                yield f"{name}:{number}: tells ways of basting apart: {line.strip()}"


def formatted(source, _build):
    """The C++ sources are as clang-format 14 leaves them (.clang-format)."""
    tool = shutil.which("clang-format-14") or shutil.which("clang-format")
    if not tool:
        yield "clang-format 14 is not installed"
        return
    files = sorted(str(file) for top in ("src", "tests") for suffix in ("*.h", "*.cpp")
                   for file in (source / top).rglob(suffix))
    said = subprocess.run([tool, "--dry-run", *files], capture_output=True, text=True, check=True).stderr
    yield from sorted(set(re.findall(r"^(.*?):\d+:\d+: warning", said, re.MULTILINE)))


def main():
    rules = {rule.__name__: rule
             for rule in (includes, links, symbols, modules, sizes, catalogue, drawing, documents,
                         formatted, identity, ways, words)}
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("rule", choices=rules)
    parser.add_argument("--source", type=pathlib.Path, required=True)
    parser.add_argument("--build", type=pathlib.Path, required=True)
    args = parser.parse_args()
    broken = list(rules[args.rule](args.source, args.build))
    print("\n".join(broken) if broken else f"{args.rule}: nothing found")
    return 1 if broken else 0


if __name__ == "__main__":
    sys.exit(main())
