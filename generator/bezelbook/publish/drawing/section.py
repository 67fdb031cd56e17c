"""The section through an opening from its face to whatever stops a thing: nine lanes to scale, blanks left blank."""

from collections.abc import Iterator, Sequence

from markupsafe import Markup

from bezelbook.publish.drawing.svg import MM, Scale, element, span, tick, words_at
from bezelbook.publish.ninths import Depth
from bezelbook.values.shown import show_mm

LANE = 22
ROW_GAP = 8
TOP = 20


def section(depths: Sequence[Depth], scale: Scale, title: str, first: str) -> Markup:
    """The nine lanes as a drawing, upper row first, left to right; the text alternative says every depth."""
    said = "; ".join(f"{depth.ninth} {depth.words(first)}{_at(depth)}" for depth in depths)
    parts = [element("title", {}, f"{title}: {said}"), *_ruler(scale)]
    for number, depth in enumerate(depths):
        parts += _lane(depth, _top_of(number), scale)
    attributes = {"class": "section", "role": "img", "width": "100%", "height": _top_of(9), "data-end": scale.end}
    return element("svg", attributes, *parts)


def _at(depth: Depth) -> str:
    return f" to the {depth.hits}" if depth.hits else ""


def _top_of(number: int) -> int:
    return TOP + number * LANE + number // 3 * ROW_GAP


def _ruler(scale: Scale) -> Iterator[Markup]:
    bottom = _top_of(9) - ROW_GAP
    for length in scale.steps(50 * MM):
        yield tick(scale, length, TOP - 4, bottom, "rule")
        if length:
            yield words_at(scale, length, TOP - 8, show_mm(length).removesuffix(" mm"), **{"text-anchor": "middle"})
    yield words_at(scale, 0, TOP - 8, "mm from the face")


def _lane(depth: Depth, top: int, scale: Scale) -> Iterator[Markup]:
    """The open lane, the strip in which the thing that stops it lies, and its name behind that."""
    across = {"y": top + 2, "height": LANE - 4}
    if depth.most is None:
        yield element("rect", {"class": "blank", **span(scale, 0, scale.end), **across, "data-ninth": depth.ninth})
        yield words_at(scale, 0, top + 15, f"{depth.ninth}: not looked", dx=6)
        return
    yield element("rect", {"class": "open", **span(scale, 0, depth.least), **across, "data-ninth": depth.ninth})
    yield element("rect", {"class": "between", **span(scale, depth.least, depth.most), **across})
    yield tick(scale, depth.most, top + 1, top + LANE - 1, "stop")
    yield words_at(scale, 0, top + 15, depth.ninth, dx=6)
    middle = (depth.least + depth.most) // 2
    yield words_at(scale, depth.least, top + 15, show_mm(middle), dx=-5, **{"text-anchor": "end", "class": "figure"})
    if depth.hits:
        yield words_at(scale, depth.most, top + 15, depth.hits, dx=6, **{"class": "stopper"})
