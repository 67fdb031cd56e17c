"""Everything that would make two notes both true, the likeliest first, each with what speaks for it."""

from collections.abc import Iterator, Sequence
from itertools import combinations

from bezelbook.kinds.note.record import AnyNote, Tried
from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.differing.arithmetic import slipped
from bezelbook.reasoning.differing.cars import other_cars
from bezelbook.reasoning.differing.case import Case, case_of
from bezelbook.reasoning.differing.explanation import Explanation
from bezelbook.reasoning.differing.held_out import held_out
from bezelbook.reasoning.differing.otherwise import otherwise
from bezelbook.reasoning.differing.read_how import read_how
from bezelbook.reasoning.differing.roomier import moved
from bezelbook.reasoning.differing.weights import weighs
from bezelbook.values.listed import listed
from bezelbook.values.words import AXES, STRONG, Axis


def explained(
    book: KnowledgeBase,
    vehicle: Vehicle | None,
    place: str,
    notes: Sequence[AnyNote],
    among: Sequence[Axis] = AXES,
    *,
    weighed: bool = False,
) -> tuple[Explanation, ...]:
    """What would make all of some notes true, weighed by the book itself, the likeliest first.

    `weighed` says that they cannot all be true however a blank is read, so that a blank alone explains nothing. An axis
    drops out where both of two notes say the same on it, and where the difference would move the answer the wrong way.
    The weights are exact; equal ones keep the order of the closed list of axes. Of more than two notes each pair is
    weighed, and of one axis the likeliest is kept. Empty when nothing explains it.
    """
    pairs = list(combinations(notes, 2))
    core = otherwise(book, vehicle, place, notes) if weighed and pairs else None
    found: dict[object, Explanation] = {}
    for pair in pairs:
        for one in _everything(case_of(book, vehicle, place, pair, weighed=weighed, core=core)):
            kept = one.words if len(pairs) == 1 else (one.axis, one.words.partition(":")[0])
            if one.axis in among and one.weight > (found[kept].weight if kept in found else 0):
                found[kept] = one
    return tuple(sorted(found.values(), key=lambda one: (-one.weight, AXES.index(one.axis), one.words)))


def _everything(case: Case) -> Iterator[Explanation]:
    yield from slipped(case)
    yield from moved(case)
    mount = held_out(case)
    if mount is not None:
        yield mount
    yield from other_cars(case)
    yield from read_how(case)
    yield from _side(case)
    yield from _how_sure(case)


def _side(case: Case) -> Iterator[Explanation]:
    """The other side: likely where a note speaks of a driver or of the other side, else hardly."""
    vehicle = case.vehicle
    place = vehicle.places.get(case.place) if vehicle else None
    if vehicle is None or place is None or place.other_side is None:
        return
    words = " ".join(str(note.words or "") for note in case.notes).casefold()
    other = {"left": "right", "right": "left"}.get(place.side, "")
    spoken = [word for word in ("driver", "passenger", other) if word and word in words.split()]
    more = f"{spoken[0]} is spoken of" if spoken else "was one of them seen on the other side?"
    yield Explanation("side", f"the side: {more}", weighs("other side spoken of" if spoken else "the other side"))


def _how_sure(case: Case) -> Iterator[Explanation]:
    weak = [
        f"{note.id} was only {note.sure}" for note in case.notes if isinstance(note, Tried) and note.sure not in STRONG
    ]
    if weak:
        yield Explanation("how sure", f"how sure: {listed(weak)}", len(weak) * weighs("a weak note"))
