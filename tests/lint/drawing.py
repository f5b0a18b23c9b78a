#!/usr/bin/env python3
"""Draws which part uses which, from what the build says, as docs/pictures/parts.svg.

Usage: drawing.py SOURCE > docs/pictures/parts.svg
`lint: drawing` fails where the stored picture is not the one drawn here.
"""

import pathlib
import re
import sys

WIDE, HIGH, STEP = 96, 34, 76  # of a box; from row to row
# Where a part's middle stands across the picture. Its row follows from what it uses.
ACROSS = {
    "planner_surface": 58, "planner_rolls": 168, "planner_passes": 113, "planner_crew": 113, "planner_points": 278,
    "planner_proof": 388, "planner_bring": 498, "planner_backing": 608, "planner_batting": 718, "checker": 828,
    "sheets": 890, "language": 890, "printing": 948, "ways": 278, "measures": 498, "job": 498, "plan": 498, "planner_whole": 498,
    "session": 664, "store": 664, "view": 800, "page": 800, "qml": 800, "app": 800,
}


def uses(source):
    """part -> parts it is linked with, or made for, read from every CMakeLists.txt of src and qml."""
    found = {}
    for listing in sorted((source / "src").rglob("CMakeLists.txt")):
        inside = listing.parent.relative_to(source / "src")
        part = str(inside).replace("planners/", "planner_")
        text = re.sub(r"#.*", "", listing.read_text())
        if " MODULE " in text and part != ".":  # opened while the program runs; it links nothing of ours
            headers = "".join(file.read_text() for file in sorted(listing.parent.glob("*.[ch]*")))
            found[part] = set(re.findall(r'#include "(\w+)/', headers))
        if "bastewright_library(" not in text or part == ".":
            continue
        libraries = set(re.findall(r"(?<!/)\bbastewright_(\w+)\b", text))
        found[part] = {("qml" if name.startswith("qml_") else name) for name in libraries}
    found["qml"] = set(re.findall(r"\bbastewright_(view|page)\b", (source / "qml/CMakeLists.txt").read_text()))
    return {part: {other for other in others if other in found and other != part} for part, others in found.items()}


def rows(graph):
    """part -> its row: one more than the highest it uses."""
    row = {}

    def of(part):
        if part not in row:
            row[part] = 1 + max((of(other) for other in graph[part]), default=-1)
        return row[part]

    for part in graph:
        of(part)
    return row


def without_detours(graph):
    """Leaves out what is reached through another part anyway."""

    def reached(part):
        out = set()
        for other in graph[part]:
            out |= {other} | reached(other)
        return out

    return {part: {other for other in others if not any(other in reached(between) for between in others)}
            for part, others in graph.items()}


def drawing(source):
    graph = uses(source)
    row = rows(graph)
    height = (max(row.values()) + 1) * STEP + 24
    place = {part: (ACROSS[part], height - 44 - row[part] * STEP - HIGH) for part in graph}
    lines = [f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 1000 {height}" '
             'font-family="Noto Sans, DejaVu Sans, sans-serif" font-size="15" text-anchor="middle">',
             f'<rect width="1000" height="{height}" fill="#fff"/>']
    for part, others in sorted(without_detours(graph).items()):
        x, y = place[part]
        for other in sorted(others):
            to, below = place[other]
            lines.append(f'<path d="M{x} {y + HIGH}C{x} {y + HIGH + 30} {to} {below - 30} {to} {below}" '
                         'fill="none" stroke="#555" stroke-width="1.5"/>')
    qt = {"language", "store", "sheets", "printing", "view", "page", "app", "qml"}
    for part in sorted(graph):
        x, y = place[part]
        fill, edge = ("#fff3cf", "#8a6d00") if part in qt else ("#dcebf5", "#004a78")
        lines.append(f'<rect x="{x - WIDE // 2}" y="{y}" width="{WIDE}" height="{HIGH}" rx="5" fill="{fill}" '
                     f'stroke="{edge}" stroke-width="1.5"/>')
        lines.append(f'<text x="{x}" y="{y + 22}">{part.replace("planner_", "")}</text>')
    lines.append(f'<text x="500" y="{height - 12}">A line goes down to what a part uses; what is used '
                 'through another part has none. Blue: the core, without Qt. Yellow: outside it.</text>')
    return "\n".join([*lines, "</svg>", ""])


if __name__ == "__main__":
    sys.stdout.write(drawing(pathlib.Path(sys.argv[1])))
