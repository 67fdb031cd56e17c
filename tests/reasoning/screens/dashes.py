"""Screens, openings and controls for tests, lengths in mm."""

from fractions import Fraction
from typing import Any

from bezelbook.kinds.head_unit.record import HeadUnit
from bezelbook.kinds.note.record import Measured
from bezelbook.kinds.record import Record
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.question import Question, asked
from bezelbook.reasoning.screens.beside_answer import screens_told
from bezelbook.reasoning.screens.controls import hole_of
from bezelbook.reasoning.screens.screen_at import ScreenAt, screen_at
from tests.reasoning import making

MM = 1_000_000


def mm(length: Fraction | float | str) -> Fraction:
    """A length in nanometres."""
    return Fraction(length) * MM


def floater(named: str = "floater", /, **content: Any) -> HeadUnit:
    """A unit with a screen of 240 x 140 mm that can be set 20 mm down or up, does not lean, and stands 10 to 40 off."""
    screen = {
        "width": "240 ± 1 mm caliper",
        "height": "140 ± 1 mm caliper",
        "offset_least": "10 ± 1 mm caliper",
        "offset_most": "40 ± 1 mm caliper",
        "height_down": "20 mm",
        "height_up": "20 mm",
        "tilt_least": "0 deg",
        "tilt_most": "0 deg",
    } | content
    told = {key: value for key, value in screen.items() if value is not None}
    return making.unit(named, size_class="floating screen", screen=told)


def control(what: str = "hazard switch", /, **content: Any) -> dict[str, Any]:
    """A switch over the opening, 30 to 50 mm from it and 60 to 90 along it."""
    said = {
        "what": what,
        "beyond": "top",
        "near": "30 ± 1 mm",
        "far": "50 ± 1 mm",
        "starts": "60 ± 1 mm",
        "ends": "90 ± 1 mm",
        "stands_out": "5 ± 1 mm",
    } | content
    return {key: value for key, value in said.items() if value is not None}


def ruled(*controls: dict[str, Any], named: str = "ruled", height: str = "101 ± 1 mm", **content: Any) -> Measured:
    """A note that outlines controls round an opening of 180 x 101 mm, which a body of 178 x 100 just fills."""
    opening = (making.reading("width", "180 ± 1 mm"), making.reading("height", height))
    return making.measured(named, *opening, controls=list(controls), **content)


def over(*records: Record, unit: str = "floater", mounts: tuple[str, ...] = (), build: int = 0) -> ScreenAt:
    """What is known of a screen over the one opening."""
    book = making.book(*records)
    place = making.place(book)
    at = place.frame.builds[build]
    return screen_at(place, book.head_units[unit], at, making.stack(book, *mounts), hole_of(place, at))


def told(book: KnowledgeBase, unit: str | None = "floater", **question: Any) -> tuple[str, ...]:
    """The lines that an answer about the one opening adds."""
    place = making.place(book)
    put = asked(place.frame, place.evidence, Question(making.CAR, making.HOLE, unit=unit, **question))
    return screens_told(place, put, unit).lines
