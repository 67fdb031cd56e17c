"""How a speaker is to be fitted, in free words: mounts by name, rings by thickness, tabs, glass."""

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.said_sizes import SIZE, UNIT
from bezelbook.reasoning.speakers.cells import Glass
from bezelbook.reasoning.speakers.stacks import Tabs
from bezelbook.reasoning.spoken.found import Choice, Found, replaced, spoken
from bezelbook.values.complaint import Wrong
from bezelbook.values.quantity import read_quantity

# Ways to say how it is fitted, each replaced in turn; common practice, no source.
FITTING_WORDS: tuple[tuple[str, str], ...] = (
    (r"\btabs? (?:out|off|gone|removed|broken(?: (?:out|off))?|snapped(?: (?:out|off))?)\b", "tabsout"),
    (r"\b(?:broken|snapped|break|snap) (?:out )?(?:the )?tabs?\b", "tabsout"),
    (r"\btabs? (?:left |still |kept )?in\b", "tabsin"),
    (r"\b(?:glass|windows?) (?:all the way |fully |right )?(?:down|lowered|run)\b", "glassdown"),
    (r"\b(?:glass|windows?) (?:fully )?(?:up|closed|shut)\b", "glassup"),
    (r"\b(?:spacers?|risers?|rings?|adaptor rings?|adapter rings?)\b", "ring"),
    (r"\b(?:no|without|w o)(?: an?| any)? (?:ring|mounts?|brackets?|adaptors?|adapters?)\b", "nomount"),
    (r"\bhalf (?:an )?inch (?=ring\b)", "1/2 in "),
    (r"\bten (?:mm )?(?=ring\b)", "10 mm "),
    (r"\bring of\b", "ring"),
)
RING = re.compile(f"(?:^| )(?:({SIZE}) (?:thick )?ring|ring ({SIZE}))(?= |$)")
# A bare number beside a ring is millimetres from 3 to 60, and anything less is inches.
LEAST_RING = 3_000_000
# An 18 ring may measure 17.5; what is further off is another ring.
NEAR = 1_000_000


@dataclass(frozen=True, slots=True)
class Fitting:
    """Mounts nearest the car first, None when nothing was said; tabs and glass; and what was told of rings."""

    mounts: tuple[str, ...] | None
    tabs: Tabs | None
    glass: Glass
    took: tuple[str, ...]


def fitting_said(book: KnowledgeBase, found: Found, text: str) -> tuple[Fitting | Choice, str]:
    """How it is fitted, or which mount is meant; and the text without what was said of that."""
    text = replaced(text, FITTING_WORDS)
    named: list[tuple[str, ...]] = list(_named(found))
    shared = next((ids for ids in named if len(ids) > 1), None)
    if shared is not None:
        return Choice("Which mount?", tuple((book.mounts[id_].name, spoken(id_)) for id_ in shared)), text
    mounts = [ids[0] for ids in named]
    took: list[str] = []
    for match in RING.finditer(text):
        ids = _rings(book, match[1] or match[2])
        if len(ids) > 1:
            return Choice("Which mount?", tuple((book.mounts[id_].name, spoken(id_)) for id_ in ids)), text
        mounts += ids
        took.append(_told(book, match[1] or match[2], ids))
    words = set(text.split())
    said = tuple(dict.fromkeys(mounts)) or (() if "nomount" in words else None)
    tabs: Tabs | None = "out" if "tabsout" in words else "in" if "tabsin" in words else None
    return Fitting(said, tabs, "up" if words & {"glassup"} else "run", tuple(took)), RING.sub(" |", text)


def mounts_named(found: Found) -> Iterator[tuple[str, ...]]:
    """The mounts that each phrase may mean, in the order of the words."""
    return _named(found)


def _named(found: Found) -> Iterator[tuple[str, ...]]:
    for _, meant in sorted(found.hits, key=lambda hit: hit[0]):
        among = [one.id for one in meant if one.points == "mount"]
        ids = tuple(found.named("mount", among))
        if ids:
            yield ids


def _rings(book: KnowledgeBase, typed: str) -> list[str]:
    """The plain rings of a thickness: those that measure just that, else those that come nearest to it."""
    rings = {
        one.id: one.thickness.base
        for one in book.mounts.values()
        if one.mount_kind == "spacer" and one.thickness is not None
    }
    off = {id_: abs(is_ - said) for id_, is_ in rings.items() for said in _thickness(typed)}
    nearest = min(off.values(), default=NEAR)
    return [id_ for id_, by in off.items() if by == nearest < NEAR]


def _told(book: KnowledgeBase, typed: str, ids: list[str]) -> str:
    """Which ring was taken for a thickness; a ring of another name or thickness is no surprise then."""
    if not ids:
        return f"the book has no ring of {typed}, so that it was left out"
    ring = book.mounts[ids[0]]
    return f"a ring of {typed} read as {ring.name}, {ring.thickness.typed if ring.thickness else ''}"


def _thickness(typed: str) -> Iterable[int]:
    try:
        if re.search(UNIT, typed):
            return (read_quantity(typed, "length").base,)
        mm = read_quantity(f"{typed} mm", "length").base
        return (mm if mm >= LEAST_RING else read_quantity(f"{typed} in", "length").base,)
    except Wrong:
        return ()
