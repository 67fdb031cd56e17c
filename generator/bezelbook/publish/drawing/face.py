"""The mating face of a connector, to scale: its cavities with their numbers, its keys and what holds it in."""

from collections.abc import Iterator
from itertools import groupby

from markupsafe import Markup

from bezelbook.kinds.connector.record import Connector
from bezelbook.publish.drawing.face_layout import Layout, Mark, layout_of, marks_of
from bezelbook.publish.drawing.svg import element
from bezelbook.reasoning.cavities import Cavities, Spot, cavities_of, mirrored
from bezelbook.values.words import EDGES, Edge

MARGIN = 5_000  # micrometres around the face, for what keys it and holds it in
THICK = 1_500
LETTERS = 1_900
MICRONS_A_PIXEL = 100
BOXES = ("long", "two-row block", "square")  # whose outline is the box that is drawn


def face(connector: Connector) -> Markup | None:
    """The drawing with its text alternative; None when its rows and columns are not looked at."""
    cavities = cavities_of(connector)
    if cavities is None:
        return None
    layout = layout_of(connector, cavities)
    wide, high = layout.width + 2 * MARGIN, layout.height + 2 * MARGIN
    shell = {"x": MARGIN, "y": MARGIN, "width": layout.width, "height": layout.height, "rx": 800}
    parts = [
        element("title", {}, f"{connector.name}: {'; '.join(face_words(connector))}"),
        element("rect", {"class": "shell", **shell}),
        *_cells(cavities, layout),
        *_marks(marks_of(connector), layout),
    ]
    size = {"width": wide // MICRONS_A_PIXEL, "height": high // MICRONS_A_PIXEL, "viewBox": f"0 0 {wide} {high}"}
    counts = {"data-rows": cavities.rows, "data-columns": cavities.columns}
    return element("svg", {"class": "face", "role": "img", **size, **counts}, *parts)


def face_words(connector: Connector) -> tuple[str, ...]:
    """What the drawing shows and what it cannot show, each without its dot."""
    cavities = cavities_of(connector)
    if cavities is None:
        return ("no drawing: its rows and columns are not looked at",)
    return tuple(_words(connector, cavities))


def _words(connector: Connector, cavities: Cavities) -> Iterator[str]:
    yield f"the face that mates, {connector.side or 'of which half is not looked'}"
    if mirrored(connector):
        yield "counted at the side the wires go in, so drawn as the mirror image of what was counted"
    if cavities.why:
        yield f"no numbers in its cavities: {cavities.why}"
    yield from _row_words(cavities)
    guessed = layout_of(connector, cavities).guessed
    yield f"not to scale: no size to draw by for {', '.join(guessed)}" if guessed else "to scale"
    if connector.shell not in BOXES:
        yield f"its outline is {connector.shell}, drawn as a plain box"
    yield from _mark_words(connector)


def _row_words(cavities: Cavities) -> Iterator[str]:
    by_place = sorted((spot, number) for number, spot in cavities.spots.items())
    for row, spots in groupby(by_place, lambda one: one[0][0]):
        yield f"row {row} from the top, left to right: {' '.join(str(number) for _, number in spots)}"


def _mark_words(connector: Connector) -> Iterator[str]:
    marks = marks_of(connector)
    yield from (f"{mark.words}: on the {mark.side}" for mark in marks if mark.side)
    if any(mark.side for mark in marks):
        yield "how far along its side a key or latch is, is not drawn"
    yield from (f"{mark.words}: on which side is not looked" for mark in marks if not mark.side)
    for name, told in (("keys", connector.keying), ("latch", connector.latch)):
        if told is None or isinstance(told, str):
            yield f"{name}: {told or 'not looked'}"


def _cells(cavities: Cavities, layout: Layout) -> Iterator[Markup]:
    """A square for each position, at its place, with the number of the cavity where that is known."""
    at = {spot: number for number, spot in cavities.spots.items()}
    for row in range(1, cavities.rows + 1):
        for column in range(1, cavities.columns + 1):
            yield _cell((row, column), at.get((row, column)), cavities, layout)


def _cell(spot: Spot, number: int | None, cavities: Cavities, layout: Layout) -> Markup:
    row, column = spot
    side = min(layout.pitch, layout.row_pitch) * 4 // 5
    x = MARGIN + (layout.width + (2 * column - cavities.columns - 1) * layout.pitch) // 2
    y = MARGIN + (layout.height + (2 * row - cavities.rows - 1) * layout.row_pitch) // 2
    box = {"x": x - side // 2, "y": y - side // 2, "width": side, "height": side}
    square = element("rect", {"class": "cavity", **box})
    told = {"data-row": row, "data-column": column, "data-cavity": number}
    return element("g", told, square, *(() if number is None else (_text(x, y, side * 3 // 5, str(number)),)))


def _marks(marks: tuple[Mark, ...], layout: Layout) -> Iterator[Markup]:
    """Those on one side stand evenly along it, outside the shell, each with its name."""
    for edge in EDGES:
        there = [mark for mark in marks if mark.side == edge]
        for number, mark in enumerate(there):
            yield _mark(mark, edge, (2 * number + 1, 2 * len(there)), layout)


def _mark(mark: Mark, edge: Edge, share: tuple[int, int], layout: Layout) -> Markup:
    flat = edge in ("top", "bottom")
    length = (layout.width if flat else layout.height) * 2 // share[1]
    along = MARGIN + (layout.width if flat else layout.height) * share[0] // share[1]
    end = MARGIN + (layout.height if flat else layout.width)
    near, label = (MARGIN - THICK, MARGIN - 2 * THICK) if edge in ("top", "left") else (end, end + 2 * THICK)
    half = min(length * 3 // 10, 4_000)
    lying = {"x": along - half, "y": near, "width": 2 * half, "height": THICK}
    box = lying if flat else {"x": near, "y": along - half, "width": THICK, "height": 2 * half}
    high = min(LETTERS, length * 3 // (2 * len(mark.kind)))
    at = (along, label) if flat else (label, along)
    words = _text(*at, high, mark.kind, transform=None if flat else f"rotate(-90 {at[0]} {at[1]})")
    return element("g", {"data-mark": mark.kind, "data-side": edge}, element("rect", {"class": "mark", **box}), words)


def _text(x: int, y: int, high: int, words: str, **more: object) -> Markup:
    """Words around a point, their letters so many micrometres high."""
    centred = {"text-anchor": "middle", "dominant-baseline": "central"}
    return element("text", {"x": x, "y": y, "font-size": high, **centred, **more}, words)
