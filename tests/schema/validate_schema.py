"""Holds written files against docs/schema with an independent validator.

    validate_schema.py SCHEMA_FOLDER DEMO_FOLDER SAMPLE_FOLDER DOCUMENT

Three questions: do all files match their schema; does a schema name every field that is written, and
is every field it names written by some sample; and does it refuse damaged files. The examples in
DOCUMENT count as files.
"""

import copy
import json
import pathlib
import re
import sys
import warnings

try:
    import jsonschema
except ImportError:
    print("SKIPPED: python3-jsonschema is not installed; files were NOT held against their schemas.")
    sys.exit(77)

warnings.simplefilter("ignore", DeprecationWarning)

KINDS = ("job", "session", "plan")


def walk(node):
    """Every object inside a schema."""
    if isinstance(node, dict):
        yield node
        for value in node.values():
            yield from walk(value)
    elif isinstance(node, list):
        for value in node:
            yield from walk(value)


class Schemas:
    def __init__(self, folder):
        self.open = {}
        for kind in KINDS:
            with open(folder / f"bastewright-{kind}.schema.json", encoding="utf-8") as file:
                schema = json.load(file)
            jsonschema.Draft202012Validator.check_schema(schema)
            self.open[kind] = schema

    def validator(self, kind):
        store = {schema["$id"]: schema for schema in self.open.values()}
        schema = self.open[kind]
        resolver = jsonschema.RefResolver(schema["$id"], schema, store)
        return jsonschema.Draft202012Validator(schema, resolver=resolver)

    def field_names(self, kind):
        names = set()
        for node in walk(self.open[kind]):
            if isinstance(node.get("properties"), dict):
                names |= set(node["properties"])
        return names


def field_names(value):
    if isinstance(value, dict):
        return set(value).union(*map(field_names, value.values()))
    if isinstance(value, list):
        return set().union(*map(field_names, value))
    return set()


def kind_of(value):
    return value["format"].removeprefix("bastewright-")


def damaged(kind, value):
    """Copies of a good file, each with one thing wrong."""

    def change(*path_and_value):
        *path, last, new = path_and_value
        out = copy.deepcopy(value)
        at = out
        for step in path:
            at = at[step]
        if new is None:
            del at[last]
        else:
            at[last] = new
        return ".".join(map(str, (*path, last))), out

    yield change("format", "other")
    yield change("version", 2)
    if kind == "plan":
        yield change("tasks", None)
        yield change("unit", "ft")
        yield change("passes", 0, "field", "x0", None)
        yield change("zones", 0, "points", 0, "angle", 180)
        yield change("tasks", 0, "kind", "dance")
        yield change("layers", "top", "width", -1)
        return
    base = ("jobs", 0) if kind == "session" else ()
    yield change(*base, "top", None)
    yield change(*base, "top", "width", -3)
    yield change(*base, "top", "width", [])
    yield change(*base, "top", "width", "-3 in")
    yield change(*base, "unit", "feet")
    yield change(*base, "basting", "with", "glue")
    yield change(*base, "batting", "gsm", "heavy")
    yield change("start", "25:00")
    yield change("helpers", 0, "pace", 0)
    yield change("helpers", 0, "name", None)
    yield change("room", "tables", 0, "count", 4000000)
    yield change("room", "walls", ["north"])


def main():
    schema_folder, demo_folder, sample_folder = map(pathlib.Path, sys.argv[1:4])
    schemas = Schemas(schema_folder)
    failures = []
    seen = {kind: set() for kind in KINDS}
    checked = {kind: 0 for kind in KINDS}
    refused = 0
    document = pathlib.Path(sys.argv[4])
    files = [(path, path.read_text(encoding="utf-8"))
             for folder in (demo_folder, sample_folder) for path in sorted(folder.glob("*.json"))]
    files += [(document, text) for text in
              re.findall(r"```json\n(.*?)```", document.read_text(encoding="utf-8"), re.DOTALL)]
    for path, text in files:
        value = json.loads(text)
        kind = kind_of(value)
        validator = schemas.validator(kind)
        checked[kind] += 1
        for error in validator.iter_errors(value):
            where = "/".join(map(str, error.absolute_path))
            failures.append(f"{path.name}: /{where}: {error.message[:300]}")
        if path.parent == sample_folder:
            seen[kind] |= field_names(value)
        if path.name in ("harbour-lights.json", "winter-afternoon.json", "plan-harbour-lights.json"):
            for what, bad in damaged(kind, value):
                if validator.is_valid(bad):
                    failures.append(f"{path.name}: the schema accepts a wrong {what}")
                refused += 1

    # Samples hold two made-up fields to see that unknown ones are kept.
    made_up = {"colour", "drawn by", "a", "lamps"}
    named_job = schemas.field_names("job")
    named = {"job": named_job, "session": named_job | schemas.field_names("session"),
             "plan": schemas.field_names("plan")}
    for kind in KINDS:
        for field in sorted(seen[kind] - named[kind] - made_up):
            failures.append(f"the {kind} schema does not name the field '{field}', which is written")
        for field in sorted(named[kind] - seen[kind]):
            failures.append(f"no sample of a {kind} has the field '{field}' of its schema")
        if checked[kind] < 4:
            failures.append(f"only {checked[kind]} files of kind {kind} were found")
    if refused < 28:
        failures.append(f"only {refused} damaged files were tried")

    for failure in failures[:40]:
        print(failure)
    print(f"{sum(checked.values())} files held against their schemas ({checked}), "
          f"{refused} damaged ones tried, {len(failures)} failures")
    return 1 if failures else 0


if __name__ == "__main__":
    sys.exit(main())
