"""Where the controls near an opening lie, seen from the front and counted from the middle of the opening."""

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

from bezelbook.kinds.note.opening import Control
from bezelbook.kinds.note.record import Measured
from bezelbook.reasoning.builds import Build
from bezelbook.reasoning.cells import Demand, RoomCell, Setting
from bezelbook.reasoning.evidence import UNCUT
from bezelbook.reasoning.mounting import BARE
from bezelbook.reasoning.room import Place
from bezelbook.reasoning.room_span import room_spans
from bezelbook.reasoning.screens.between import FAR, NOWHERE_KNOWN, Between, exactly, read
from bezelbook.values.quantity import Quantity
from bezelbook.values.words import Edge

HALF = exactly(Fraction(1, 2))


@dataclass(frozen=True, slots=True)
class Hole:
    """The width and the height of the bare opening."""

    width: Between
    height: Between


@dataclass(frozen=True, slots=True)
class Near:
    """A control as a rectangle, its sides in nanometres from the middle of the opening, up and right positive.

    A side that nobody measured may be anywhere. `sure` says that the note is of this very build, and not of one that
    was not named. `stands_out` is how far it stands out of the dash.
    """

    what: str
    note: str
    edge: Edge
    left: Between
    right: Between
    bottom: Between
    top: Between
    stands_out: Between
    sure: bool

    @property
    def outlined(self) -> bool:
        """Whether all four of its sides were measured."""
        return all(side.bounded for side in (self.left, self.right, self.bottom, self.top))


def hole_of(place: Place, build: Build) -> Hole:
    """The size of the bare opening of a build, by every reading, over all accounts of it."""
    setting = Setting(build, BARE, UNCUT, "aside", plugs_on=False)
    wanted = (
        Demand("width", RoomCell(build, UNCUT, None, "width"), 0, None),
        Demand("height", RoomCell(build, UNCUT, None, "height"), 0, None),
    )
    spans = [room_spans(rooms.measured(), setting, wanted) for rooms in place.accounts]
    width, height = (
        Between(
            Fraction(min(found[index].least for found in spans)),
            max(FAR if (most := found[index].most) is None else Fraction(most) for found in spans),
        )
        for index in (0, 1)
    )
    return Hole(width, height)


def controls_at(place: Place, build: Build, hole: Hole) -> tuple[Near, ...]:
    """The controls that the strong notes of a place outline, for cars that are or may be of this build."""
    return tuple(_controls(place, build, hole))


def _controls(place: Place, build: Build, hole: Hole) -> Iterator[Near]:
    house = place.frame.book.shop.tools.none.base
    for one in place.evidence.standing:
        if isinstance(one.note, Measured) and build in one.builds:
            for control in one.note.controls:
                yield near(control, one.note.id, hole, house, sure=len(one.builds) == 1)


def near(control: Control, note: str, hole: Hole, house: int, *, sure: bool) -> Near:
    """A control as a rectangle; `house` is the ± of a length that was typed without one, in nanometres."""
    close, far = _outward(control, house)
    start, end = _along(control, house)
    half_width, half_height = hole.width.times(HALF), hole.height.times(HALF)
    away = {"top": half_height, "bottom": half_height, "left": half_width, "right": half_width}[control.beyond]
    inner, outer = away.plus(close), away.plus(far)
    mirrored = control.beyond in ("bottom", "left")
    across = (_turned(outer), _turned(inner)) if mirrored else (inner, outer)
    if control.beyond in ("top", "bottom"):
        left, right = start.minus(half_width), end.minus(half_width)
        bottom, top = across
    else:
        left, right = across
        bottom, top = half_height.minus(end), half_height.minus(start)
    stands_out = read(control.stands_out, house) if control.stands_out else NOWHERE_KNOWN
    return Near(control.what, note, control.beyond, left, right, bottom, top, stands_out, sure)


def _outward(control: Control, house: int) -> tuple[Between, Between]:
    """From the edge of the opening to its near and to its far side; a far side before the near one was never read."""
    close = read(control.near, house)
    far = None if control.far is None or control.far.base < control.near.base else read(control.far, house)
    return close, far or Between(close.low, FAR)


def _along(control: Control, house: int) -> tuple[Between, Between]:
    start, end = (_side(size, house) for size in (control.starts, control.ends))
    return (NOWHERE_KNOWN, NOWHERE_KNOWN) if start.low > end.high else (start, end)


def _side(size: Quantity | None, house: int) -> Between:
    return NOWHERE_KNOWN if size is None else read(size, house)


def _turned(length: Between) -> Between:
    return Between(-length.high, -length.low)
