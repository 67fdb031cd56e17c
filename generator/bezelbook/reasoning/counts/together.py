"""How long several jobs on one car take when they share a way in."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Work:
    """One job: the seconds it takes once everything is open, and the pieces that come off for it."""

    name: str
    own: int
    pieces: frozenset[str]


def together(works: Iterable[Work], piece_seconds: Mapping[str, int]) -> tuple[int, frozenset[str]]:
    """The seconds that these jobs take on one car, each piece off and on once; and the pieces nobody timed."""
    every = tuple(works)
    pieces = frozenset().union(*(work.pieces for work in every))
    removal = sum(piece_seconds.get(piece, 0) for piece in pieces)
    return sum(work.own for work in every) + removal, pieces - piece_seconds.keys()
