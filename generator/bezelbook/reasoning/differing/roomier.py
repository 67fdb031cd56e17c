"""What gives more room the one way than the other: the loom aside, plugs off, tabs out, glass up, something cut."""

from collections.abc import Iterator, Mapping
from fractions import Fraction
from functools import partial

from bezelbook.kinds.note.record import AnyNote, Bench, Measured, Tried
from bezelbook.reasoning.differing.case import Asked, Case, Explains
from bezelbook.reasoning.differing.explanation import Explanation
from bezelbook.reasoning.differing.weights import BEYOND_USUAL, MOVES, Moves
from bezelbook.reasoning.speakers.cells import EITHER_PLACES, SPEAKER_PLACES
from bezelbook.values.words import Axis

READ_AS: Mapping[Axis, str] = {"plugs": "off", "loom": "aside", "cut": "nothing"}
CUT = "something"


def moved(case: Case) -> Iterator[Explanation]:
    """Each circumstance that may have given the note that wants more room just that; the wrong way round drops out."""
    for axis, moves in MOVES.items():
        if case.clash.size in moves.sizes and _belongs(case, axis):
            asked = Asked(
                axis,
                partial(way_of, axis),
                moves.ways,
                partial(_written, axis),
                partial(_done_so, axis),
                weighed=case.weighed,
            )
            found = case.unequal(asked, _explains(case, moves))
            if found is not None:
                yield found


def way_of(axis: Axis, note: AnyNote) -> str | None:
    """Which way it was: whoever fitted something had its plugs on, and a reading is of the bare hole unless it says."""
    said = _written(axis, note)
    return READ_AS.get(axis) if said is None and isinstance(note, Measured) else said


def _written(axis: Axis, note: AnyNote) -> str | None:
    if axis == "plugs" and isinstance(note, Tried) and note.sure == "fitted":
        return "on"
    said: str | None = getattr(note, axis, None)
    return CUT if axis == "cut" and said not in (None, "nothing") else said


def _done_so(axis: Axis, note: AnyNote, value: str) -> AnyNote:
    """A note of the same in which this was done so."""
    return note.model_copy(update={axis: value})


def _explains(case: Case, moves: Moves) -> Explains:
    over = Fraction(max(0, case.wanted - moves.usual), moves.most - moves.usual)
    within = max(BEYOND_USUAL, 1 - over)  # the more room is wanting, the seldomer it gives as much

    def explains(first: str, second: str) -> Fraction:
        pair = (first, second) if case.clash.roomier == 0 else (second, first)
        return within if pair == moves.ways else Fraction(0)

    return explains


def _belongs(case: Case, axis: Axis) -> bool:
    """Glass and tabs are a matter of places for speakers, the loom and plugs of openings, cuts of both.

    Only a mount has tabs, only what was offered up has plugs, and a reading is called by where the glass was.
    """
    if axis == "tabs" and not any(_may_have_tabs(case, note) for note in case.notes):
        return False
    if axis in ("plugs", "glass") and case.weighed and not all(isinstance(note, Tried) for note in case.notes):
        return False
    if axis == "cut" or case.vehicle is None or case.place not in case.vehicle.places:
        return True
    kind = case.vehicle.places[case.place].kind
    return kind in EITHER_PLACES or (kind in SPEAKER_PLACES) == (axis in ("tabs", "glass"))


def _may_have_tabs(case: Case, note: AnyNote) -> bool:
    """Whether something with tabs was there, or a thing of which nobody knows."""
    if isinstance(note, Bench) or note.mounts is None:
        return isinstance(note, Tried)
    named = [case.book.mount_named(words) for words in note.mounts] if isinstance(note.mounts, tuple) else []
    return any(mount is None or mount.tabs_in is not None or mount.tabs_out is not None for mount in named)
