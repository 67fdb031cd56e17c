"""Which piece has to be off before which, on whose word and why, and what was only ever done in that order."""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass

from bezelbook.kinds.note.record import Seen

HABIT = "habit"
LIES_OVER = "lies over"
# A piece that was named as coming first, by somebody who did not write why: until he is asked, it is a must.
NOT_SAID = "not said why"
# What a note may say of two pieces, as the words that stand between their names where there are such.
_OVERLAPS: Mapping[str | None, str] = {
    None: LIES_OVER,
    LIES_OVER: LIES_OVER,
    "overlaps the edge": "overlaps the edge of",
    "traps": "traps",
}


@dataclass(frozen=True, slots=True)
class Before:
    """`first` is off before `then`: every reason that was given and every note that gives one, both in order."""

    first: str
    then: str
    why: tuple[str, ...]
    notes: tuple[str, ...]

    @property
    def says_why(self) -> bool:
        """Whether anybody wrote a reason."""
        return self.why != (NOT_SAID,)


@dataclass(frozen=True, slots=True)
class Shared:
    """Pieces that one and the same screw holds: it is out before any of them comes off."""

    pieces: tuple[str, ...]
    notes: tuple[str, ...]


def musts(notes: Iterable[Seen]) -> tuple[Before, ...]:
    """What has to be off before what, each pair once; a piece is never before itself."""
    return _merged(one for note in notes for one in _said(note) if one.why != (HABIT,))


def habits(notes: Iterable[Seen]) -> tuple[Before, ...]:
    """What was done first though nothing asked for it, each pair once."""
    return _merged(one for note in notes for one in _said(note) if one.why == (HABIT,))


def shared_screws(notes: Iterable[Seen]) -> tuple[Shared, ...]:
    """The groups of pieces that share a screw, each group once."""
    found: dict[tuple[str, ...], list[str]] = {}
    for note in notes:
        group = tuple(sorted(set(note.shares_screw)))
        if len(group) > 1:
            found.setdefault(group, []).append(note.id)
    return tuple(Shared(group, tuple(ids)) for group, ids in sorted(found.items()))


def _said(note: Seen) -> Iterator[Before]:
    for overlap in note.lies_over:
        yield Before(overlap.piece, overlap.over, (_OVERLAPS[overlap.how],), (note.id,))
    for off in note.pieces:
        for first in off.first:
            why = LIES_OVER if first.why == "overlap" else first.why or NOT_SAID
            yield Before(first.piece, off.piece, (why,), (note.id,))


def _merged(said: Iterable[Before]) -> tuple[Before, ...]:
    found: dict[tuple[str, str], list[Before]] = {}
    for one in said:
        if one.first != one.then:
            found.setdefault((one.first, one.then), []).append(one)
    return tuple(_one(first, then, pair) for (first, then), pair in sorted(found.items()))


def _one(first: str, then: str, pair: list[Before]) -> Before:
    why = dict.fromkeys(reason for one in pair for reason in one.why)
    given = tuple(reason for reason in why if reason != NOT_SAID) or (NOT_SAID,)
    return Before(first, then, given, tuple(dict.fromkeys(note for one in pair for note in one.notes)))
