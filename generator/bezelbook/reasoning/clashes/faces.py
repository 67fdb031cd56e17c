"""Two sets of readings that lie the same way apart everywhere: what a reading from another face looks like."""

from collections.abc import Iterator, Sequence

from bezelbook.kinds.note.record import AnyNote, Measured, RoomReading
from bezelbook.reasoning.clashes.clash import Explained
from bezelbook.values.shown import show_length
from bezelbook.values.words import NINTHS

DEEP = ("depth", "rear depth to fixed", "rear depth to glass down", "rear depth at worst of travel", "front clearance")
# Common practice, no source: nobody's two faces are further apart than this, in nanometres.
MOST = 80_000_000


def other_face(notes: Sequence[AnyNote]) -> Explained | None:
    """Whether two measuring notes differ by one and the same amount at two spots or more.

    Two readings of one spot may differ for any reason; the same difference twice over is a face.
    """
    if len(notes) != 2 or not all(isinstance(note, Measured) for note in notes):
        return None
    one, other = (dict(_spots(note)) for note in notes if isinstance(note, Measured))
    shared = [spot for spot in one if spot in other]
    apart = [other[spot].reads.base - one[spot].reads.base for spot in shared]
    give = [_give(one[spot]) + _give(other[spot]) for spot in shared]
    distinct = len({id(one[spot]) for spot in shared}) > 1 and len({id(other[spot]) for spot in shared}) > 1
    if not distinct or max(apart) - min(apart) > min(give) or not max(give) < min(map(abs, apart)) <= MOST:
        return None
    late = notes[1]
    return Explained("face", late.id, ("readings",), "", show_length(abs(sum(apart) // len(apart))))


def _spots(note: Measured) -> Iterator[tuple[tuple[str, str], RoomReading]]:
    for reading in note.readings:
        if reading.of in DEEP:
            for ninth in NINTHS if reading.zones == "all" else reading.zones or ("",):
                yield (reading.of, ninth), reading


def _give(reading: RoomReading) -> int:
    return reading.reads.give or 0
