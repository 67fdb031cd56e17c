"""The tape strip: how far a size may go, as a length of tape with known yes, known no, and grey between."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from string import ascii_lowercase

from markupsafe import Markup

from bezelbook.publish.drawing.svg import MM, Scale, element, span, tick, words_at
from bezelbook.publish.reach import Reach
from bezelbook.values.shown import show_length, show_mm

INCH = 25_400_000
HEIGHT = 78
BAND = (26, 52)


@dataclass(frozen=True, slots=True)
class Notch:
    """Something that was tried: its size in nanometres, whether it went in, and what each note of it says."""

    size: int
    went_in: bool
    words: tuple[str, ...]


def tape(reach: Reach, notches: Sequence[Notch], scale: Scale, title: str, first: str) -> Markup:
    """The strip as a drawing with its text alternative; notches are lettered in their order."""
    parts = [
        element("title", {}, f"{title}: {reach_words(reach, first)}"),
        element("line", {"class": "hook", "x1": 0, "x2": 0, "y1": BAND[0] - 2, "y2": BAND[1] + 8}),
        *_band(reach, scale),
        *_millimetres(scale),
        *_inches(scale),
        *_notches(notches, scale),
    ]
    attributes = {"class": "tape", "role": "img", "width": "100%", "height": HEIGHT, "data-end": scale.end}
    return element("svg", attributes, *parts)


def reach_words(reach: Reach, first: str) -> str:
    """What the strip shows, as a sentence without its dot."""
    return "; ".join(_reach_words(reach, first))


def lettered(notches: Sequence[Notch]) -> tuple[tuple[str, Notch], ...]:
    """Each notch with its letter: a to z, then aa, ab and so on."""
    return tuple((_letters(number), notch) for number, notch in enumerate(notches))


def _letters(number: int) -> str:
    tens, ones = divmod(number, 26)
    return (_letters(tens - 1) if tens else "") + ascii_lowercase[ones]


def _reach_words(reach: Reach, first: str) -> Iterator[str]:
    if reach.sure:
        yield f"goes in up to {show_length(reach.sure, first)}"
    if reach.argued is not None:
        end = "" if reach.refused is None else f" to {show_length(reach.refused, first)}"
        yield f"argued over from {show_length(reach.argued, first)}{end}"
    if reach.refused is not None:
        yield f"does not from {show_length(reach.refused, first)} on"
    if not reach.sure and reach.argued is None and reach.refused is None:
        yield "nobody knows yet"


def _band(reach: Reach, scale: Scale) -> Iterator[Markup]:
    top, bottom = BAND
    across = {"y": top, "height": bottom - top}
    no = min(scale.end if reach.refused is None else reach.refused, scale.end)
    grey = min(no if reach.argued is None else reach.argued, no)
    for kind, low, high in (
        ("yes", 0, min(reach.sure, scale.end)),
        ("grey", reach.sure, grey),
        ("argued", grey, no),
        ("no", no, scale.end),
    ):
        if high > low:
            yield element("rect", {"class": kind, **span(scale, low, high), **across})


def _millimetres(scale: Scale) -> Iterator[Markup]:
    top, _ = BAND
    for length in scale.steps(10 * MM):
        long = length % (50 * MM) == 0
        yield tick(scale, length, top - (9 if long else 5), top)
        if long and 0 < length < scale.end:
            yield words_at(scale, length, top - 13, show_mm(length).removesuffix(" mm"), **{"text-anchor": "middle"})
    yield words_at(scale, 0, top - 13, "mm")


def _inches(scale: Scale) -> Iterator[Markup]:
    _, bottom = BAND
    for length in scale.steps(INCH // 2):
        whole = length % INCH == 0
        yield tick(scale, length, bottom, bottom + (9 if whole else 5))
        if whole and length > 0:
            yield words_at(scale, length, bottom + 22, str(length // INCH), **{"text-anchor": "middle"})
    yield words_at(scale, 0, bottom + 22, "in")


def _notches(notches: Sequence[Notch], scale: Scale) -> Iterator[Markup]:
    """A line across the tape with its letter, and an arrowhead: from above when it went in, from below when not."""
    top, bottom = BAND
    for letter, notch in lettered(notches):
        edge, head = (top, "M-5 0h10l-5 8z") if notch.went_in else (bottom, "M-5 0h10l-5 -8z")
        kind = "notch went-in" if notch.went_in else "notch did-not"
        place = {"x": scale.at(notch.size), "y": edge, "overflow": "visible"}
        arrow = element("svg", place, element("path", {"d": head}))
        beside = words_at(scale, notch.size, (top + bottom) // 2 + 5, letter, dx=6)
        yield element("g", {"class": kind}, tick(scale, notch.size, top, bottom), arrow, beside)
