"""How large a connector's face is drawn, how far apart its cavities are, and what is on which of its sides."""

import re
from collections.abc import Iterator
from dataclasses import dataclass

from bezelbook.kinds.connector.record import Connector, Key, Latch, Terminals
from bezelbook.publish.drawing.svg import MM
from bezelbook.reasoning.cavities import Cavities, mirrored
from bezelbook.values.quantity import Quantity
from bezelbook.values.words import Edge

MICRON = 1_000  # in nanometres: what is drawn is whole micrometres
USUAL_PITCH = 2_500
RIM = 1_500  # of the shell around its cavities, where nobody measured it
SMALLEST, LARGEST = MM // 2, 300 * MM  # a size outside these is no size of a face
OTHER_SIDE: dict[Edge, Edge] = {"left": "right", "right": "left", "top": "top", "bottom": "bottom"}

SIDEWAYS = re.compile(r"\b(?:left|right)\b", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class Layout:
    """Sizes of a face in micrometres; `guessed` names those for which the record has none to draw by."""

    width: int
    height: int
    pitch: int
    row_pitch: int
    guessed: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Mark:
    """A key or a latch: on which side of the face as it mates, or None when that is not looked at."""

    kind: str
    words: str
    side: Edge | None


def layout_of(connector: Connector, cavities: Cavities) -> Layout:
    """The sizes to draw by: what was measured, else what follows from it, else what is usual."""
    terminals = connector.terminals or Terminals()
    apart = _drawable(terminals.pitch)
    across = _drawable(connector.width), apart
    down = _drawable(connector.height), _drawable(terminals.row_pitch) or apart
    width, pitch, guessed = _along(*across, cavities.columns, ("width", "pitch"))
    height, row_pitch, more = _along(*down, cavities.rows, ("height", "row pitch"))
    return Layout(width, height, pitch, row_pitch, (*guessed, *more))


def marks_of(connector: Connector) -> tuple[Mark, ...]:
    """Every key and the latch, as the mating face shows them."""
    turned = mirrored(connector)
    return tuple(
        Mark(one.kind, words, OTHER_SIDE[one.side] if turned and one.side else one.side)
        for one, words in _told(connector)
    )


def _told(connector: Connector) -> Iterator[tuple[Key | Latch, str]]:
    if isinstance(connector.keying, tuple):
        yield from ((key, _key_words(key, turned=mirrored(connector))) for key in connector.keying)
    if isinstance(connector.latch, Latch):
        yield connector.latch, connector.latch.kind


def _key_words(key: Key, *, turned: bool) -> str:
    """A key as it was typed; where the drawing is turned over, whose left and right its words mean."""
    theirs = " as seen from the wires" if turned and key.reads and SIDEWAYS.search(key.reads) else ""
    return f"{key.kind} {key.reads or ''}".strip() + theirs


def _drawable(size: Quantity | None) -> int | None:
    """A size in micrometres, when there is one that a face can have."""
    return round(size.base / MICRON) if size and SMALLEST <= size.base <= LARGEST else None


def _along(size: int | None, apart: int | None, count: int, names: tuple[str, str]) -> tuple[int, int, tuple[str, ...]]:
    """The face's size and its cavities' distance in one direction, and the names of those that are guessed."""
    if size and apart and (count - 1) * apart >= size:
        apart = None  # so many, so far apart, do not go into it
    step = apart or (size // (count + 1) if size else USUAL_PITCH)  # evenly, with shell left at both ends
    missing = (not size, not apart and count > 1)
    return size or count * step + 2 * RIM, step, tuple(name for name, gone in zip(names, missing, strict=True) if gone)
