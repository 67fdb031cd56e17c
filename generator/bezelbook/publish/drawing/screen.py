"""A screen over the controls near an opening, seen from the front and to scale: the best setting, and its range."""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction

from markupsafe import Markup

from bezelbook.publish.drawing.svg import MM, element
from bezelbook.reasoning.screens.between import Between
from bezelbook.reasoning.screens.controls import Near
from bezelbook.reasoning.screens.screen_at import Lying

MICROMETRE = 1_000  # nanometres; the drawing counts in whole micrometres
MARGIN = 12 * MM
RULE = 50 * MM
LETTERS_ACROSS = 26  # so many letters would fill the drawing, so that they can be read on a phone


@dataclass(frozen=True, slots=True)
class Box:
    """A rectangle in nanometres from the middle of the opening, right and up positive."""

    left: Fraction
    right: Fraction
    bottom: Fraction
    top: Fraction


@dataclass(frozen=True, slots=True)
class _Sheet:
    """Where on the drawing a place is: `frame` is what is shown."""

    frame: Box

    @property
    def letter(self) -> int:
        """How high a letter is, in micrometres."""
        return round((self.frame.right - self.frame.left) / (MICROMETRE * LETTERS_ACROSS))

    def words(self, x: int, y: int, words: str) -> Markup:
        """Words with their middle over a place of the drawing."""
        return element("text", {"x": x, "y": y, "text-anchor": "middle", "font-size": self.letter}, words)

    def rect(self, kind: str, box: Box, **more: object) -> Markup:
        x, y = self.at(box.left, box.top)
        right, bottom = self.at(box.right, box.bottom)
        return element("rect", {"class": kind, "x": x, "y": y, "width": right - x, "height": bottom - y, **more})

    def at(self, x: Fraction, y: Fraction) -> tuple[int, int]:
        """A place in micrometres from the upper left corner of the drawing."""
        return round((x - self.frame.left) / MICROMETRE), round((self.frame.top - y) / MICROMETRE)


def screen(lying: Lying, letters: Sequence[str], title: str) -> Markup:
    """The drawing: the opening, each control with its letter, the screen at its best and faintly at both its ends.

    A control that nobody outlined on all sides runs on to the edge of the drawing there. Sizes are those in the middle
    of their ±.
    """
    opening = box_of_opening(lying)
    best, ends = box_of_screen(lying, lying.usable.best), (lying.usable.reach.low, lying.usable.reach.high)
    ghosts = [box_of_screen(lying, height) for height in ends if height != lying.usable.best]
    controls = [over.control for over in lying.usable.overs]
    sheet = _Sheet(_frame([opening, best, *ghosts], controls))
    parts = [
        element("title", {}, title),
        sheet.rect("opening", opening),
        *(sheet.rect("ghost", ghost) for ghost in ghosts),
        *(_control(sheet, control) for control in controls),
        sheet.rect("screen", best),
        *_middles(sheet, opening, best),
        *(_letter(sheet, control, letter) for control, letter in zip(controls, letters, strict=True)),
        *_rule(sheet),
    ]
    wide, high = sheet.at(sheet.frame.right, sheet.frame.bottom)
    return element("svg", {"class": "outline", "role": "img", "viewBox": f"0 0 {wide} {high}"}, *parts)


def box_of_opening(lying: Lying) -> Box:
    """The opening; where nobody measured it, as large as the body needs it at least."""
    width, height = (_middle(size) / 2 for size in (lying.hole.width, lying.hole.height))
    return Box(-width, width, -height, height)


def box_of_screen(lying: Lying, height: Fraction) -> Box:
    """The screen as seen from the front, with its middle at this height."""
    wide = lying.outline.half_width.middle
    high = lying.outline.half_height(lying.usable.lean or 0).middle
    aside = lying.seat.aside.middle
    return Box(aside - wide, aside + wide, height - high, height + high)


def _middle(size: Between) -> Fraction:
    return size.middle if size.bounded else size.low


def _frame(boxes: Iterable[Box], controls: Iterable[Near]) -> Box:
    """What is shown: everything whose place is known, and a margin."""
    boxes = list(boxes)
    xs = [x for box in boxes for x in (box.left, box.right)]
    ys = [y for box in boxes for y in (box.bottom, box.top)]
    for control in controls:
        xs += [side.middle for side in (control.left, control.right) if side.bounded]
        ys += [side.middle for side in (control.bottom, control.top) if side.bounded]
    return Box(min(xs) - MARGIN, max(xs) + MARGIN, min(ys) - MARGIN, max(ys) + MARGIN)


def _control(sheet: _Sheet, control: Near) -> Markup:
    kind = "control" if control.outlined else "control unsure"
    return sheet.rect(kind, _shown(sheet, control), **{"data-control": control.what})


def _shown(sheet: _Sheet, control: Near) -> Box:
    """A control, its unknown sides at the edges of the drawing."""
    frame = sheet.frame
    return Box(
        control.left.middle if control.left.bounded else frame.left,
        control.right.middle if control.right.bounded else frame.right,
        control.bottom.middle if control.bottom.bounded else frame.bottom,
        control.top.middle if control.top.bounded else frame.top,
    )


def _letter(sheet: _Sheet, control: Near, letter: str) -> Markup:
    box = _shown(sheet, control)
    x, y = sheet.at((box.left + box.right) / 2, (box.bottom + box.top) / 2)
    return sheet.words(x, y + sheet.letter // 3, letter)


def _middles(sheet: _Sheet, opening: Box, best: Box) -> Iterator[Markup]:
    """A line across each middle: of the opening to its left, of the screen to its right."""
    for kind, box, ends in (
        ("middle", opening, (opening.left, opening.left + 2 * MARGIN)),
        ("middle set", best, (opening.right - 2 * MARGIN, opening.right)),
    ):
        height = (box.bottom + box.top) / 2
        (x1, y), (x2, _) = (sheet.at(x, height) for x in ends)
        yield element("line", {"class": kind, "x1": x1, "x2": x2, "y1": y, "y2": y})


def _rule(sheet: _Sheet) -> Iterator[Markup]:
    """A length to compare with, in the lower left corner."""
    x, y = sheet.at(sheet.frame.left + MARGIN // 2, sheet.frame.bottom + MARGIN // 2)
    end = x + RULE // MICROMETRE
    yield element("line", {"class": "length", "x1": x, "x2": end, "y1": y, "y2": y})
    yield sheet.words((x + end) // 2, y - sheet.letter // 4, "50 mm")
