"""What could be read in an opening that nobody has read, and the readings that are still possible."""

from collections.abc import Sequence
from dataclasses import dataclass

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.builds import Build
from bezelbook.reasoning.cells import Demand, Setting, demands
from bezelbook.reasoning.evidence import UNCUT
from bezelbook.reasoning.mounting import BARE
from bezelbook.reasoning.needs import NEEDS, Need, needs_of_sizes, needs_of_unit
from bezelbook.reasoning.room import Place, Rooms
from bezelbook.reasoning.room_span import RoomSpan, room_spans
from bezelbook.reasoning.slip import LIMITS_MM, MM
from bezelbook.values.quantity import read_quantity
from bezelbook.values.span import Span, around
from bezelbook.values.words import Ninth

# How many readings stand for all that are still possible: the middles of so many equal parts of what is likely.
TRIED = 7
# The step and the first number of each size: TRIED is prime, so that each of its numbers is met once, and no two sizes
# are at their least in the same outcome.
STEPS = {"width": (1, 0), "height": (3, 2), "nose width": (2, 4), "nose height": (5, 6), "depth": (4, 3)}
# So many likely lengths say more than what is possible at all.
ENOUGH = 3
# How closely each is read, in nanometres: with a caliper, and with a depth gauge.
READ_TO = {size: MM if size == "depth" else MM // 2 for size in STEPS}
# Any box at all, nose and body: only which spots it asks about matters here.
ANY_BOX = needs_of_sizes({need: read_quantity("1 mm", "length") for need in NEEDS[:5]}, None)
# Common practice, no source: behind a dash opening there are so many millimetres.
BEHIND_MM = (120, 240)
# A reading that leaves more than this open is worth taking again.
COARSE = 4 * MM
# How much larger than a box the front of an opening may be that was made for boxes like it, in millimetres. The front
# space of ISO 7736 is 182 x 53 (from memory) for a body of 178 x 50; what is made for two high leaves 2 to 11 more.
OVER_MM = (-2, 1, 4, 7, 10)
# Builds of one car are as often alike as not (common practice, no source): half of what is likely is what was read in
# the others.


@dataclass(frozen=True, slots=True)
class Unread:
    """A size of an opening that nobody read to a few millimetres, with the least and the most that it may still be.

    All are in nanometres; `likely` are lengths, shortest first, each as likely as any other.
    """

    size: str
    ninth: Ninth | None
    least: int
    most: int
    likely: tuple[int, ...] = ()

    def reading(self, number: int) -> Span:
        """What somebody reads in the outcome of this number: a likely length, as far as those are still possible."""
        return around(
            one_of_likely(self.likely, self.least, self.most, numbered(self.size, number)), READ_TO[self.size]
        )


def numbered(size: str, number: int) -> int:
    """Which reading of a size goes with the outcome of a number: sizes do not go up and down together."""
    step, first = STEPS[size]
    return (step * number + first) % TRIED


def one_of_likely(likely: Sequence[int], least: int, most: int, number: int) -> int:
    """The length of this number among those likely and still possible, where these are enough; else among all."""
    inside = [length for length in likely if least < length < most]
    if len(inside) >= ENOUGH:
        return inside[len(inside) * (2 * number + 1) // (2 * TRIED)]
    return least + (most - least) * (2 * number + 1) // (2 * TRIED)


def unread(place: Place, build: Build) -> tuple[Unread, ...]:
    """What nobody read at a bare opening of this build: its front, that of its bezel, and the depth of each ninth."""
    setting, wanted = _bare(place, build)
    known = [_known(rooms, setting, wanted) for rooms in place.accounts]
    spans = [room_spans(rooms, setting, wanted) for rooms in place.accounts]
    likely = {need: likely_lengths(place.frame.book, need) for need in {demand.need for demand in wanted}}
    others = _read_in_others(place, build)
    found = []
    for index, demand in enumerate(wanted):
        if not any(one[index] for one in known):
            low, high = (limit * MM for limit in limits_mm(demand.need))
            tops = [one[index].most for one in spans]
            most = high if None in tops else max(top for top in tops if top is not None)
            least = max(low, min(one[index].least for one in spans))
            if least < most:
                lengths = _as_in_others(likely[demand.need], [one[index] for one in others], least, most)
                found.append(Unread(demand.need, demand.ninth, least, most, lengths))
    return tuple(found)


def _bare(place: Place, build: Build) -> tuple[Setting, tuple[Demand, ...]]:
    """A build of a bare opening, with every spot of it that a box may meet."""
    setting = Setting(build, BARE, UNCUT, "aside", plugs_on=False)
    bezel = place.frame.vehicle.places[place.frame.place].kind == "opening behind a bezel"
    return setting, demands(place.frame._replace(nose_framed=bezel), ANY_BOX, setting)[0]


def _read_in_others(place: Place, build: Build) -> list[list[int | None]]:
    """For each other build, by each account: what somebody read of each spot closely; None where nobody did."""
    settings = [_bare(place, other) for other in place.frame.builds if other != build]
    return [
        [(span.least + span.most) // 2 if span.most is not None and _closely(span) else None for span in spans]
        for rooms in place.accounts
        for setting, wanted in settings
        for spans in [room_spans(rooms.measured(), setting, wanted)]
    ]


def _as_in_others(likely: Sequence[int], others: Sequence[int | None], least: int, most: int) -> tuple[int, ...]:
    """What is likely, half of it what was read in other builds, as far as that is still possible."""
    alike = [length for length in others if length is not None and least < length < most]
    if not alike:
        return tuple(likely)
    inside = [length for length in likely if least < length < most]
    return tuple(sorted([*inside, *alike * max(ENOUGH, len(inside) // len(alike))]))


def limits_mm(need: Need) -> tuple[int, int]:
    """The usual limits of an opening's size; those of a nose are those of what goes through."""
    return LIMITS_MM[need if "nose" in need else f"opening {need}"]


def likely_lengths(book: KnowledgeBase, need: Need) -> tuple[int, ...]:
    """What an opening may measure: its front about as much as the boxes of the book, its depth as is common."""
    if need == "depth":
        return tuple(length * MM for length in range(*BEHIND_MM))
    spans = [needs_of_unit(book, unit).spans[need] for unit in book.head_units.values()]
    return tuple(sorted(middle + over * MM for middle in middles(spans) for over in OVER_MM))


def middles(spans: Sequence[Span]) -> tuple[int, ...]:
    """The middles of those spans that end on both sides, shortest first."""
    return tuple(sorted((one.low + one.high) // 2 for one in spans if one.low is not None and one.high is not None))


def _known(rooms: Rooms, setting: Setting, wanted: Sequence[Demand]) -> list[bool]:
    return [_closely(span) for span in room_spans(rooms.measured(), setting, wanted)]


def _closely(span: RoomSpan) -> bool:
    return span.most is not None and span.most - span.least <= COARSE
