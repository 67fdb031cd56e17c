"""What gives more room the one way than the other: the loom aside, plugs off, tabs out, glass up, something cut."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from fractions import Fraction
from functools import partial

from bezelbook.kinds.note.record import AnyNote, Measured, Tried
from bezelbook.reasoning.differing.case import Case, Explains
from bezelbook.reasoning.differing.explanation import Explanation
from bezelbook.reasoning.speakers.cells import EITHER_PLACES, SPEAKER_PLACES
from bezelbook.values.words import Axis

MM = 1_000_000
READ_AS: Mapping[Axis, str] = {"plugs": "off", "loom": "aside", "cut": "nothing"}
BEYOND = Fraction(1, 10)


@dataclass(frozen=True, slots=True)
class Moves:
    """A circumstance: which way of it gives more room, of which sizes, and how much it gives as a rule and at most.

    The amounts, in nanometres, are common practice, no source.
    """

    generous: str
    mean: str
    sizes: frozenset[str]
    usual: int
    most: int


CUT = "something"
MOVES: Mapping[Axis, Moves] = {
    "loom": Moves("aside", "behind", frozenset({"depth"}), 10 * MM, 40 * MM),
    "plugs": Moves("off", "on", frozenset({"depth"}), 30 * MM, 50 * MM),
    "tabs": Moves("out", "in", frozenset({"hole"}), 15 * MM, 25 * MM),
    "glass": Moves("up", "down", frozenset({"depth"}), 15 * MM, 40 * MM),
    "cut": Moves(
        CUT, "nothing", frozenset({"depth", "width", "height", "nose width", "hole", "front"}), 20 * MM, 100 * MM
    ),
}


def moved(case: Case) -> Iterator[Explanation]:
    """Each circumstance that may have given the note that wants more room just that; the wrong way round drops out."""
    for axis, moves in MOVES.items():
        if case.clash.size in moves.sizes and _belongs(case, axis):
            found = case.unequal(axis, partial(way_of, axis), _ways(moves), _explains(case, moves))
            if found is not None:
                yield found


def way_of(axis: Axis, note: AnyNote) -> str | None:
    """Which way it was: whoever fitted something had its plugs on, and a reading is of the bare hole unless it says."""
    if axis == "plugs" and isinstance(note, Tried) and note.sure == "fitted":
        return "on"
    said: str | None = getattr(note, axis, None)
    if said is None and isinstance(note, Measured):
        said = READ_AS.get(axis)
    return CUT if axis == "cut" and said not in (None, "nothing") else said


def _ways(moves: Moves) -> tuple[str, str]:
    return moves.generous, moves.mean


def _explains(case: Case, moves: Moves) -> Explains:
    over = Fraction(max(0, case.wanted - moves.usual), moves.most - moves.usual)
    within = max(BEYOND, 1 - over)  # the more room is wanting, the seldomer it gives as much

    def explains(first: str, second: str) -> Fraction:
        pair = (first, second) if case.clash.roomier == 0 else (second, first)
        return within if pair == (moves.generous, moves.mean) else Fraction(0)

    return explains


def _belongs(case: Case, axis: Axis) -> bool:
    """Glass and tabs are a matter of places for speakers, the loom and plugs of openings, cuts of both."""
    if axis == "cut" or case.vehicle is None or case.place not in case.vehicle.places:
        return True
    kind = case.vehicle.places[case.place].kind
    return kind in EITHER_PLACES or (kind in SPEAKER_PLACES) == (axis in ("tabs", "glass"))
