"""Reads and works the built program as a screen reader does: over AT-SPI, from another process.

On the shelf, the planning screen and its sheets every button and field that is showing has a name and
a role of its kind; pressing through AT-SPI alone begins a quilt, opens the demo, comes to its plan,
reads its headings and figures, and hears in one sentence why a width of nothing is refused.
"""

import os
import re
import shutil
import signal
import subprocess
import sys
import tempfile
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent.parent / "window"))
from window_test import Display  # noqa: E402  (a neighbour)

SKIPPED = 77


def every_control_is_told(reader, where):
    from tree import FIELDS, PRESSED
    controls = [s for s in reader.look() if s.sensitive and (s.focusable or s.role in PRESSED | FIELDS)]
    assert len(controls) >= 4, f"{where}: only {controls}"
    for control in controls:
        assert control.name.strip(), f"{where}: no name: {control}"
        assert control.role in PRESSED | FIELDS or not control.actions(), f"{where}: no role of its kind: {control}"
    for control in controls:
        if control.role in PRESSED:
            assert "Press" in control.actions(), f"{where}: cannot be pressed: {control}"
    names = [c.name for c in controls if c.role in PRESSED]
    twice = {n for n in names if names.count(n) > 1}
    print(f"{where}: {len(controls)} controls{', said twice: ' + str(sorted(twice)) if twice else ''}")


def heading(reader, name):
    from tree import Atspi
    reader.wait(lambda s: s.role == Atspi.Role.HEADING and s.name == name, f"the heading '{name}'")


def read(reader):
    from tree import Atspi, PRESSED
    heading(reader, "Your quilts")
    every_control_is_told(reader, "shelf")

    reader.press("Plan a new quilt")
    for question in ("How large is the quilt top?", "How will it be quilted?", "How close together do pins go?",
                     "Which tables are there?", "Who comes to help?"):
        heading(reader, question)
        every_control_is_told(reader, question)
        reader.press("Next")
    heading(reader, "What is in the box?")
    every_control_is_told(reader, "supplies")
    reader.press("Back")
    heading(reader, "Who comes to help?")
    reader.press("Back to your quilts")

    reader.press("Examples")
    heading(reader, "Examples from Saltmarsh Hall")
    every_control_is_told(reader, "examples")
    example = reader.wait(lambda s: s.role in PRESSED and s.name.startswith("Harbour Lights"), "the demo")
    example.press()

    figure = reader.wait(lambda s: re.fullmatch(r"\d+ passes: why", s.name) and s.sensitive, "the plan's passes")
    heading(reader, "Your plan")
    every_control_is_told(reader, "the plan")
    figure.press()
    heading(reader, "How it is worked out")
    every_control_is_told(reader, "why")
    reader.press("Close")

    reader.wait(lambda s: s.name.startswith("Your quilt, ") and s.role in PRESSED, "the quilt").press()
    heading(reader, "Your quilt")
    every_control_is_told(reader, "the quilt")
    reader.wait(lambda s: s.name == "Width at the head, 88\u00a0in", "its width").press()
    heading(reader, "Width at the head")
    every_control_is_told(reader, "a figure to change")
    reader.press("0")
    reader.press("Set")
    said = reader.wait(lambda s: s.role in (Atspi.Role.ALERT, Atspi.Role.NOTIFICATION) and "0" in s.name,
                       "why a width of nothing is refused")
    print(f"refused: {said.name}")
    reader.press("Cancel")
    reader.named("Width at the head, 88\u00a0in")


def inside(executable):
    """Within a session bus of its own."""
    try:
        from tree import Atspi, Reader
        if Atspi.init() > 1:
            raise RuntimeError("the service does not start")
        Atspi.get_desktop(0).get_child_count()
    except Exception as trouble:  # whatever is missing: the service, its bindings, a bus
        print(f"SKIPPED: no AT-SPI here ({trouble}); nothing was read from outside", file=sys.stderr)
        return SKIPPED
    process = subprocess.Popen([executable])
    try:
        read(Reader("bastewright"))
    finally:
        process.send_signal(signal.SIGKILL)
        process.wait()
    print("1 passed, 0 failed")
    return 0


def main(executable):
    if not shutil.which("dbus-run-session"):
        print("SKIPPED: no dbus-run-session; nothing was read from outside", file=sys.stderr)
        return SKIPPED
    with tempfile.TemporaryDirectory() as home, Display() as display:
        os.chmod(home, 0o700)
        environment = {
            "PATH": os.environ["PATH"], "HOME": home, "DISPLAY": display.name,
            "XDG_RUNTIME_DIR": home, "XDG_DATA_HOME": home + "/data", "XDG_CONFIG_HOME": home + "/config",
            "QT_QPA_PLATFORM": "xcb", "QT_LINUX_ACCESSIBILITY_ALWAYS_ON": "1", "LC_ALL": "C.UTF-8"}
        return subprocess.run(["dbus-run-session", "--", sys.executable, __file__, "--inside", executable],
                              env=environment, timeout=240).returncode


if __name__ == "__main__":
    sys.exit(inside(sys.argv[2]) if sys.argv[1] == "--inside" else main(sys.argv[1]))
