"""The outline of a screen that stands off the dash, and every way in which it can be set."""

from dataclasses import dataclass
from fractions import Fraction

from bezelbook.kinds.head_unit.record import HeadUnit, Screen
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.screens.between import FAR, NOTHING, NOWHERE_KNOWN, Between, exactly, read
from bezelbook.reasoning.screens.lean import ANY, cosine, sine
from bezelbook.values.quantity import Quantity

BLANKS = {
    "how far its screen stands off the dash": ("offset_least", "offset_most"),
    "how far up and down its screen can be set": ("height_down", "height_up"),
    "how far its screen leans": ("tilt_least", "tilt_most"),
}


@dataclass(frozen=True, slots=True)
class Outline:
    """A screen in nanometres: `width` and `height` of the outline as it stands upright.

    `down` and `up` are how far its middle can be set from the middle of its body, `down_most` and `up_most` how far at
    most, which is anything where nobody looked. `flattest` and `steepest` are leans in millidegrees, None where nobody
    looked. `nearest` and `furthest` are offsets from the dash. `body_height` and `body_width` are those of its body.
    `blanks` says what nobody looked at, in words.
    """

    name: str
    width: Between
    height: Between
    down: Fraction
    up: Fraction
    down_most: Fraction
    up_most: Fraction
    flattest: int | None
    steepest: int | None
    nearest: Between
    furthest: Between
    body_width: Between
    body_height: Between
    blanks: tuple[str, ...]

    def half_height(self, lean: int | None) -> Between:
        """Half of its height as seen from the front when it leans so far; None is any lean."""
        share = ANY if lean is None else cosine(lean)
        return self.height.times(share).times(exactly(Fraction(1, 2)))

    @property
    def half_width(self) -> Between:
        """Half of its width."""
        return self.width.times(exactly(Fraction(1, 2)))

    @property
    def dip(self) -> Fraction:
        """How much nearer to the dash an edge may come than the middle, by leaning as far as it can, at most."""
        share = ANY if self.steepest is None else sine(self.steepest)
        return self.height.high / 2 * share.high


def outline_of(book: KnowledgeBase, unit: HeadUnit) -> Outline | None:
    """The outline of a unit's screen; None where it has none, or none whose width and height were measured."""
    screen = unit.screen
    if screen is None or not (_measured(screen.width) and _measured(screen.height)):
        return None
    house = book.shop.tools.bench_caliper.base
    flattest, steepest = _leans(screen)
    up, down = screen.height_up, screen.height_down
    return Outline(
        unit.name,
        _above_nothing(read(screen.width, house)),
        _above_nothing(read(screen.height, house)),
        Fraction(down.base if down else 0),
        Fraction(up.base if up else 0),
        Fraction(down.base) if down else FAR,
        Fraction(up.base) if up else FAR,
        flattest,
        steepest,
        _offset(screen.offset_least, house),
        _offset(screen.offset_most, house),
        _body(unit.body_width, house),
        _body(unit.body_height, house),
        tuple(what for what, fields in BLANKS.items() if any(getattr(screen, field) is None for field in fields)),
    )


def _measured(size: Quantity) -> bool:
    """Whether a size was read off the thing; one printed on a sheet, or that does not say, is no more than told."""
    return size.by == "caliper" or (size.by is None and size.give is not None)


def _leans(screen: Screen) -> tuple[int | None, int | None]:
    if screen.tilt_least is None or screen.tilt_most is None:
        return None, None
    one, other = screen.tilt_least.base, screen.tilt_most.base
    return max(0, min(one, other), -max(one, other)), max(abs(one), abs(other))


def _offset(size: Quantity | None, house: int) -> Between:
    return read(size, house) if size is not None and _measured(size) else NOWHERE_KNOWN


def _body(size: Quantity | None, house: int) -> Between:
    return _above_nothing(read(size, house)) if size is not None and _measured(size) else Between(NOTHING.low, FAR)


def _above_nothing(size: Between) -> Between:
    return Between(max(size.low, Fraction(0)), size.high)
