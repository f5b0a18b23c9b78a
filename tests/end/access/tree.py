"""What assistive technology sees of the program: its tree of AT-SPI, read from outside."""

import time

import gi

gi.require_version("Atspi", "2.0")
from gi.repository import Atspi, GLib  # noqa: E402  (the version has to be asked for first)

WAIT = 60  # seconds for a plan or a slow machine

PRESSED = {Atspi.Role.PUSH_BUTTON, Atspi.Role.CHECK_BOX, Atspi.Role.TOGGLE_BUTTON, Atspi.Role.RADIO_BUTTON}
FIELDS = {Atspi.Role.ENTRY, Atspi.Role.TEXT, Atspi.Role.SLIDER, Atspi.Role.SPIN_BUTTON}


def has(node, state):
    return node.get_state_set().contains(state)


class Seen:
    """One showing thing: its name, its role, and how to press it."""

    def __init__(self, node):
        self.node, self.role, self.name = node, node.get_role(), node.get_name() or ""
        self.sensitive = has(node, Atspi.StateType.SENSITIVE) or has(node, Atspi.StateType.ENABLED)
        self.focusable = has(node, Atspi.StateType.FOCUSABLE)

    def actions(self):
        try:
            return [self.node.get_action_name(i) for i in range(self.node.get_n_actions())]
        except GLib.Error:
            return []  # it has none

    def press(self):
        actions = self.actions()
        assert "Press" in actions, f"'{self.name}' ({self.node.get_role_name()}) has only {actions}"
        assert self.node.do_action(actions.index("Press")), self.name

    def __repr__(self):
        return f"{self.node.get_role_name()} '{self.name}'"


def program(name):
    desktop = Atspi.get_desktop(0)
    for i in range(desktop.get_child_count()):
        child = desktop.get_child_at_index(i)
        if child and child.get_name() == name:
            return child
    return None


def showing(node, out):
    for i in range(node.get_child_count()):
        try:
            child = node.get_child_at_index(i)
            if child is None or not has(child, Atspi.StateType.SHOWING):
                continue
            out.append(Seen(child))
            showing(child, out)
        except GLib.Error:
            continue  # it went while it was looked at
    return out


class Reader:
    def __init__(self, name):
        self.name = name

    def look(self):
        application = program(self.name)
        if application is None:
            return []
        application.clear_cache()
        return showing(application, [])

    def wait(self, fits, what):
        end = time.monotonic() + WAIT
        while time.monotonic() < end:
            try:
                seen = self.look()
            except GLib.Error:
                seen = []
            for one in seen:
                if fits(one):
                    return one
            time.sleep(0.15)
        raise AssertionError(f"{what} is never told; there is {self.look()}")

    def named(self, name):
        return self.wait(lambda s: s.name == name and s.sensitive, f"'{name}'")

    def press(self, name):
        self.wait(lambda s: s.name == name and s.sensitive and s.role in PRESSED, f"'{name}'").press()
