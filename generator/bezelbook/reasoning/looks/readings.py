"""What could be read in an opening that nobody has read, and the readings that are still possible."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from decimal import Decimal

from bezelbook.kinds.note.record import Measured
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.builds import Build
from bezelbook.reasoning.cells import Demand, Setting
from bezelbook.reasoning.corners import body_demands
from bezelbook.reasoning.evidence import UNCUT
from bezelbook.reasoning.mounting import BARE
from bezelbook.reasoning.room import Place, Rooms
from bezelbook.reasoning.room_span import room_spans
from bezelbook.reasoning.slip import LIMITS_MM, MM
from bezelbook.values.words import Ninth

# How many readings stand for all that are still possible: the middles of so many equal parts of what is open.
TRIED = 5
# No note of the book has this name: it is not written down, only imagined.
IMAGINED = "a-look-not-taken"


@dataclass(frozen=True, slots=True)
class Unread:
    """A size of an opening that no reading bounds, with the least and the most in nanometres that it may still be.

    `usual` are all readings of that size in the book, in order.
    """

    size: str
    ninth: Ninth | None
    least: int
    most: int
    usual: tuple[int, ...] = ()

    def reading(self, number: int) -> dict[str, object]:
        """The imagined reading of this number, in whole millimetres.

        Where enough openings of the book were read, a reading is most likely one like theirs; else it may be anything.
        """
        inside = [length for length in self.usual if self.least < length < self.most]
        width = (self.most - self.least) // MM
        millimetres = Decimal(self.least // MM) + Decimal(width * (2 * number + 1)) / (2 * TRIED)
        if len(inside) >= TRIED:
            millimetres = Decimal(inside[len(inside) * (2 * number + 1) // (2 * TRIED)]) / MM
        where = {"zones": [self.ninth], "datum": "sub-dash face"} if self.ninth else {"zones": "all"}
        return {"of": self.size, "reads": f"{round(millimetres)} ± 1 mm", **where}


def unread(place: Place, build: Build) -> tuple[Unread, ...]:
    """What nobody read at a bare opening of this build: width, height, and the depth of each ninth."""
    setting = Setting(build, BARE, UNCUT, "aside", plugs_on=False)
    wanted = body_demands(place, setting)
    known = [_known(rooms, setting, wanted) for rooms in place.accounts]
    spans = [room_spans(rooms, setting, wanted) for rooms in place.accounts]
    usual = {size: usual_readings(place.frame.book, size) for size in {demand.need for demand in wanted}}
    found = []
    for index, demand in enumerate(wanted):
        if not any(one[index] for one in known):
            low, high = (limit * MM for limit in LIMITS_MM[f"opening {demand.need}"])
            tops = [one[index].most for one in spans]
            most = max((top for top in tops if top is not None), default=high) if None not in tops else high
            least = max(low, min(one[index].least for one in spans))
            if least < most:
                found.append(Unread(demand.need, demand.ninth, least, most, usual[demand.need]))
    return tuple(found)


def usual_readings(book: KnowledgeBase, size: str) -> tuple[int, ...]:
    """What anybody read of this size at any opening of the book and not by eye, shortest first, in nanometres."""
    limits = LIMITS_MM[f"opening {size}"]
    notes = (note for note in book.notes.values() if isinstance(note, Measured))
    lengths = (one.reads.base for note in notes for one in note.readings if one.of == size and one.tool != "eye")
    return tuple(sorted(length for length in lengths if limits[0] * MM <= length <= limits[1] * MM))


def read_as(place: Place, build: Build, sizes: Iterable[Unread], numbers: Mapping[str, int]) -> Measured:
    """The note that somebody would write who read these sizes; `numbers` says which reading each kind of size has."""
    note = {
        "id": IMAGINED,
        "form": "measured",
        "vehicle": place.frame.vehicle.id,
        "place": place.frame.place,
        "splits": dict(build),
        "numbers": "read back",
        "readings": [one.reading(numbers[one.size]) for one in sizes],
    }
    return Measured.model_validate(note)


def _known(rooms: Rooms, setting: Setting, wanted: Sequence[Demand]) -> list[bool]:
    return [span.most is not None for span in room_spans(rooms.measured(), setting, wanted)]
