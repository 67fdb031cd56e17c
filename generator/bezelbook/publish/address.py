"""Where each thing of the book is on the site, and how one page points at another."""

import posixpath
from collections.abc import Mapping
from dataclasses import dataclass
from urllib.parse import quote

from bezelbook.kinds import KINDS
from bezelbook.kinds.note.record import AnyNote, Bench
from bezelbook.kinds.record import PART_KINDS
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.values.withheld import withheld

HOME = "index.md"
VEHICLES = "vehicles.md"
PARTS = "parts.md"
MONDAY = "monday.md"
LOOK_NEXT = "look-next.md"
CHECKS = "checks.md"
READING = "reading.md"
WRITING = "writing.md"
SHOP = "shop.md"
LOOSE = "loose-notes.md"
FINDINGS_LOG = "data/findings.sarif.json"
BOOK_SCRIPT = "data/book.js"
# Kinds of record that stand together on one page.
LISTED = {kind.name: f"{kind.page}.md" for kind in KINDS.values() if kind.page}
# What comes before the words in the address of an answer.
ASKED = "ask="


def finding_anchor(number: int) -> str:
    """The anchor of a finding on the Monday list, by where it stands in it."""
    return f"question-{number}"


def vehicle_page(vehicle: str) -> str:
    """The page of a vehicle, by its id."""
    return f"vehicles/{vehicle}.md"


def removal_page(vehicle: str) -> str:
    """The page that says what comes off a vehicle first, by the vehicle's id."""
    return f"vehicles/{vehicle}/removal.md"


def head_unit_page(unit: str) -> str:
    """The page of a head unit, by its id."""
    return f"head-units/{unit}.md"


def mount_page(mount: str) -> str:
    """The page of a mount, by its id."""
    return f"mounts/{mount}.md"


def part_page(kind: str, part: str) -> str:
    """The page of a part of any kind, by the names of both."""
    return f"{_FOLDERS[kind]}/{part}.md"


_FOLDERS = {kind.name: kind.folder.replace("_", "-") for kind in KINDS.values()}


def writing_page(kind: str) -> str:
    """The page that shows how to write a record of a kind, by the kind's name."""
    return f"writing/{kind.replace('_', '-')}.md"


def rule_page(rule: str) -> str:
    """The page of a rule, by its name."""
    return f"checks/{rule}.md"


def vehicle_script(vehicle: str) -> str:
    """The data script of a vehicle, by its id."""
    return f"data/vehicles/{vehicle}.js"


def place_anchor(place: str) -> str:
    """The anchor of a place on its vehicle's page."""
    return f"place-{place}"


def look_anchor(vehicle: str) -> str:
    """The anchor of a vehicle on the page of what to look at next."""
    return f"next-{vehicle}"


def note_anchor(note: str) -> str:
    """The anchor of a note on the page that quotes it in full."""
    return f"note-{note}"


def record_anchor(kind: str, record: str) -> str:
    """The anchor of a record on the page of its kind, where a kind has one page."""
    return f"{kind}-{record}"


def note_page(book: KnowledgeBase, note: AnyNote) -> str:
    """The page that quotes a note in full: its vehicle's, its part's, or that of notes which point at nothing."""
    if not isinstance(note, Bench):
        return vehicle_page(note.vehicle) if note.vehicle in book.vehicles else LOOSE
    kind = part_kind(book, note.part)
    return part_page(kind, note.part) if kind else LOOSE


def part_kind(book: KnowledgeBase, part: str) -> str | None:
    """The kind of the part of this id; the first that has one when two kinds do, None when none has."""
    return next((kind for kind in PART_KINDS if part in book.records.get(kind, {})), None)


def built(path: str) -> str:
    """The path of a page once the engine has built it: what is Markdown ends in .html."""
    return f"{path.removesuffix('.md')}.html" if path.endswith(".md") else path


@dataclass(frozen=True, slots=True)
class Links:
    """Relative addresses as they are written on the page at `page`."""

    page: str
    book: KnowledgeBase

    def to(self, path: str, anchor: str = "") -> str:
        """The address of a page, or of an anchor on it."""
        away = posixpath.relpath(built(path), posixpath.dirname(self.page) or ".")
        return f"{away}#{anchor}" if anchor else away

    def vehicle(self, vehicle: str) -> str:
        """The address of a vehicle's page."""
        return self.to(vehicle_page(vehicle))

    def place(self, vehicle: str, place: str) -> str:
        """The address of a place on its vehicle's page."""
        return self.to(vehicle_page(vehicle), place_anchor(place))

    def head_unit(self, unit: str) -> str:
        """The address of a head unit's page."""
        return self.to(head_unit_page(unit))

    def mount(self, mount: str) -> str:
        """The address of a mount's page."""
        return self.to(mount_page(mount))

    def record(self, kind: str, record: str) -> str:
        """The address of a record of any kind; empty when the book has none of that id."""
        if kind == "note" and record in self.book.struck:
            return self.note(self.book.written(record))
        found = self.book.records.get(kind, {}).get(record)
        if found is None:
            return ""
        if kind == "note":
            return self.note(self.book.notes[record])
        if kind in LISTED:
            return self.to(LISTED[kind], record_anchor(kind, record))
        return self.to(SHOP if kind == "shop" else part_page(kind, record))

    def rule(self, rule: str) -> str:
        """The address of a rule's page."""
        return self.to(rule_page(rule))

    def note(self, note: AnyNote) -> str:
        """The address at which a note is quoted in full."""
        return self.to(note_page(self.book, note), note_anchor(note.id))

    def finding(self, number: int) -> str:
        """The address of a finding on the Monday list, by where it stands in it."""
        return self.to(MONDAY, finding_anchor(number))

    def ask(self, words: str) -> str:
        """The address of the answer to a question in words."""
        return self.to(HOME, ASKED + quote(withheld(words)))

    @property
    def top(self) -> Mapping[str, str]:
        """The addresses of the pages that there is one of."""
        pages = {
            "home": HOME,
            "vehicles": VEHICLES,
            "parts": PARTS,
            "monday": MONDAY,
            "look_next": LOOK_NEXT,
            "checks": CHECKS,
            "reading": READING,
            "writing": WRITING,
            "shop": SHOP,
            "loose": LOOSE,
            "findings_log": FINDINGS_LOG,
            **{path.removesuffix(".md"): path for path in LISTED.values()},
        }
        return {name: self.to(path) for name, path in pages.items()}
