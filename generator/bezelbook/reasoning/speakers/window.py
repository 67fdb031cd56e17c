"""Which rings would do on one side: how thick the thinnest and the thickest may be, and what each of the book does."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from fractions import Fraction

from bezelbook.reasoning.speakers.cells import RoomSize, SpeakerSetting
from bezelbook.reasoning.speakers.question import SpeakerAsked, spacers
from bezelbook.reasoning.speakers.rooms import SpeakerPlace, SpeakerRooms
from bezelbook.reasoning.speakers.stacks import BARE, stack_of
from bezelbook.reasoning.speakers.thickness import End, measured_depths, thickness
from bezelbook.reasoning.speakers.verdict import judge
from bezelbook.values.words import AnswerVerdict

# Common practice, no source: how much of a ring of open-cell foam goes when the grille presses on it.
FRONT_SQUEEZE = Fraction(30, 100)


@dataclass(frozen=True, slots=True)
class RingVerdict:
    """What one ring does on this side; the nanometres left over behind and in front are None where nobody measured.

    Of several builds, and of notes that cannot all be true, that with the least left over counts.
    """

    ring: str
    name: str
    thickness: int
    verdict: AnswerVerdict
    behind: int | None
    front: int | None


@dataclass(frozen=True, slots=True)
class Window:
    """The rings for one speaker on one side. An end is None where nobody measured what would set it.

    `argued` says that the notes here cannot all be true, and then no end is told.
    """

    low: End | None
    high: End | None
    rings: tuple[RingVerdict, ...]
    argued: bool = False

    @property
    def empty(self) -> bool:
        """Whether no ring at all would do."""
        return self.low is not None and self.high is not None and self.low.at > self.high.at

    @property
    def good(self) -> tuple[RingVerdict, ...]:
        """The rings with which it goes in."""
        return tuple(ring for ring in self.rings if ring.verdict == "goes in")


def window(place: SpeakerPlace, question: SpeakerAsked) -> Window:
    """The window of a question about a speaker, whatever mounts it names, with its gasket; over all builds left open.

    `s_min = depth + margin - D_rear - g` and `s_max = F_front - g - front height - margin` by the middles.
    """
    bare = question.narrowed(stacks=(BARE,), any_mount=False)
    rings = tuple(_ring(place, bare, ring.id) for ring in spacers(place))
    if len(place.accounts) != 1:
        return Window(None, None, rings, argued=True)
    return Window(*thickness(place, bare), rings)


def for_both(windows: Sequence[Window]) -> tuple[str, ...]:
    """The rings by id with which it goes in on every one of these sides."""
    good = [{ring.ring for ring in one.good} for one in windows]
    return tuple(sorted(set.intersection(*good))) if good else ()


def foam_height(front: int, held: int, flange: int, squeeze: Fraction = FRONT_SQUEEZE) -> Fraction:
    """How high a ring of foam has to be, free, to meet the grille: nanometres, exactly.

    `gap = F - (s + g + flange)`, and the foam gives up `squeeze` of itself; `held` is what ring and gasket hold out.
    """
    return (front - held - flange) / (1 - squeeze)


def _ring(place: SpeakerPlace, bare: SpeakerAsked, ring: str) -> RingVerdict:
    book = place.frame.book
    stack = stack_of(book, (ring,), bare.gasket)
    asked = bare.narrowed(stacks=(stack,))
    depths = [one for rooms in place.accounts for setting in asked.settings for one in _left(rooms, asked, setting)]
    behind = min((left for size, left in depths if size in place.frame.rears), default=None)
    front = min((left for size, left in depths if size == "front"), default=None)
    mount = book.mounts[ring]
    thickness = mount.thickness.base if mount.thickness else 0
    verdict = judge(place, asked).verdict
    return RingVerdict(ring, mount.name, thickness, verdict, behind, front)


def _left(rooms: SpeakerRooms, asked: SpeakerAsked, setting: SpeakerSetting) -> Iterable[tuple[RoomSize, int]]:
    """What is left over between the middles at each depth that was measured."""
    for demand, room, need in measured_depths(rooms, asked, setting):
        if room.most is not None:
            yield demand.size, (room.least + room.most) // 2 - need
