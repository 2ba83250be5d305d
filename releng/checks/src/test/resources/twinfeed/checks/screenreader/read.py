# SPDX-License-Identifier: EPL-2.0
"""Reads a running window by the bus of assistive technology (AT-SPI), as a screen reader does, and prints what has no name.

read.py SECONDS SURVEY SAVE PAGE...   waits at most so long for the window. SURVEY is what the list of the survey's pages is called, SAVE the menu
    item that saves, PAGE one that opens a page. A line for each page ("PAGE name: controls"), for each link ("LINK name"), a line for each control that a person can reach
    and that nobody can tell the name of ("NAMELESS page: role"). Opens the pages by the bus too. Between survey and pages it saves: a
    line for each status bar ("STATUS text") and for each sentence that was announced ("SAID text").
"""
import sys
import time

import gi

gi.require_version("Atspi", "2.0")
from gi.repository import Atspi, GLib

REACHED = {
    "text", "password text", "combo box", "table", "tree table", "tree", "list", "push button", "toggle button", "check box",
    "radio button", "menu", "menu item", "check menu item", "radio menu item", "link", "slider", "spin button", "page tab", "entry",
    "page tab list", "canvas", "drawing area",
}
LONGEST_LIST = 4

# What opens on a click only is looked into all the same.
MENUS = {"menu", "menu item", "check menu item", "radio menu item"}

def children(node):
    count = node.get_child_count()
    if node.get_role_name() in ("table", "tree table", "tree", "list"):
        count = min(count, LONGEST_LIST)
    for index in range(count):
        child = node.get_child_at_index(index)
        if child is not None:
            yield child


def walk(node):
    """All that can be seen; what is hidden is not looked into."""
    yield node
    for child in children(node):
        if showing(child) or child.get_role_name() in MENUS:
            yield from walk(child)


def showing(node):
    states = node.get_state_set()
    return states.contains(Atspi.StateType.SHOWING) and states.contains(Atspi.StateType.VISIBLE)


def window(seconds):
    end = time.monotonic() + seconds
    while time.monotonic() < end:
        desktop = Atspi.get_desktop(0)
        for index in range(desktop.get_child_count()):
            application = desktop.get_child_at_index(index)
            if application is not None and application.get_name() == "Twinfeed":
                for frame in children(application):
                    if frame.get_role_name() == "frame" and showing(frame):
                        return frame
        time.sleep(0.5)
    sys.exit("no window on the bus")


def named(node):
    if node.get_name().strip():
        return True
    relations = node.get_relation_set()
    return any(relation.get_relation_type() == Atspi.RelationType.LABELLED_BY for relation in relations)


def read(frame, page):
    seen = 0
    for node in walk(frame):
        role = node.get_role_name()
        if role in REACHED and showing(node):
            seen += 1
            if role == "link":
                print(f"LINK {node.get_name()}", flush=True)
            if not named(node):
                parent = node.get_parent()
                near = [each.get_name() for each in children(parent.get_parent()) if each.get_name()] if parent else []
                print(f"NAMELESS {page}: {role} {near[:3]} {node.get_description()!r}", flush=True)
    print(f"PAGE {page}: {seen}", flush=True)


def find(frame, role, name):
    for node in walk(frame):
        if node.get_role_name() == role and node.get_name() == name:
            return node
    return None


def press(node, seconds=2.0):
    node.get_action_iface().do_action(0)
    time.sleep(seconds)


def main():
    # The window is busy while a page is made; a person would wait too.
    Atspi.set_timeout(60_000, 60_000)
    end = time.monotonic() + float(sys.argv[1])
    frame = window(float(sys.argv[1]))
    pages = None
    while pages is None:
        if time.monotonic() > end:
            sys.exit("no list of pages")
        time.sleep(1)
        pages = find(frame, "table", sys.argv[2])
    table = pages.get_table_iface() if hasattr(pages, "get_table_iface") else pages.get_table()
    for row in range(table.get_n_rows()):
        table.add_row_selection(row)
        time.sleep(1.5)
        read(frame, f"survey {row + 1}")
    listen(frame, sys.argv[3])
    for item in sys.argv[4:]:
        choose(frame, item)
        read(frame, item)


def listen(frame, save):
    """Saves the job, and tells what is announced meanwhile."""
    heard = []
    listener = Atspi.EventListener.new(lambda event: heard.append(str(event.any_data)))
    listener.register("object:announcement")
    choose(frame, save)
    GLib.timeout_add_seconds(5, Atspi.event_quit)
    Atspi.event_main()
    for node in walk(frame):
        if node.get_role_name() in ("status bar", "statusbar"):
            print(f"STATUS {node.get_name()}", flush=True)
    for sentence in heard:
        print(f"SAID {sentence}", flush=True)


def choose(frame, item):
    """Opens one menu after the other, for they are filled only then, and chooses the item."""
    bar = next(node for node in walk(frame) if node.get_role_name() == "menu bar")
    for menu in children(bar):
        press(menu, 0.4)
        entry = filled(menu, item)
        if entry is not None:
            press(entry)
            return
        press(menu, 0.4)
    sys.exit("no menu item " + item)


def filled(menu, item):
    """The item of an open menu, which is filled while one waits; None if it has none of that name."""
    end = time.monotonic() + 10
    while menu.get_child_count() == 0 and time.monotonic() < end:
        time.sleep(0.1)
    # A menu is filled from top to bottom: look once more.
    for _ in range(2):
        for entry in children(menu):
            if entry.get_name() == item:
                return entry
        time.sleep(0.2)
    return None


main()
