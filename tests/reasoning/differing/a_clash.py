"""Two notes that clash over depth, and the axes that come of it, in few words."""

from typing import Any

from bezelbook.kinds.note.record import AnyNote
from bezelbook.kinds.record import Record
from bezelbook.reasoning.differing.explaining import explained
from bezelbook.reasoning.differing.explanation import Explanation
from tests.reasoning import making

DEEP = making.unit("deep", body_depth="170 ± 1 mm caliper")
SHALLOW = making.unit("shallow", body_depth="160 ± 1 mm caliper")


def yes(**said: Any) -> AnyNote:
    """The deeper one went in."""
    return making.tried("yes", **{"what": "deep", "sure": "dry-fitted", **said})


def no(**said: Any) -> AnyNote:
    """The shallower one did not."""
    return making.tried(
        "no", **{"what": "shallow", "sure": "dry-fitted", "verdict": "does not", "reason": "depth", **said}
    )


def why(first: AnyNote, second: AnyNote, *others: Record) -> tuple[Explanation, ...]:
    """What explains two notes of the one opening."""
    book = making.book(DEEP, SHALLOW, first, second, *others)
    return explained(book, book.vehicles[making.CAR], making.HOLE, (first, second))


def why_still(first: AnyNote, second: AnyNote, *others: Record) -> tuple[Explanation, ...]:
    """The same of two that cannot both be true however a blank is read."""
    book = making.book(DEEP, SHALLOW, first, second, *others)
    return explained(book, book.vehicles[making.CAR], making.HOLE, (first, second), weighed=True)


def axes(found: tuple[Explanation, ...]) -> list[str]:
    """Only what they turn on, the likeliest first."""
    return [one.axis for one in found]


def note(name: str, form: str, **said: Any) -> AnyNote:
    """A note of another form at the one opening."""
    made: AnyNote = making.record("notes", name, {"form": form, "vehicle": making.CAR, "place": making.HOLE, **said})
    return made
