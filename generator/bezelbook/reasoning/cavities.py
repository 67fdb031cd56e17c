"""Where each cavity of a connector lies on its mating face, as far as its record tells."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from bezelbook.kinds.connector.record import Connector, Numbering

# A record may hold more rows and columns than its cavities fill, but no face has this many positions.
MOST = 400

Spot = tuple[int, int]  # the row from the top and the column from the left, both from 1


@dataclass(frozen=True, slots=True)
class Cavities:
    """The rows and columns of a mating face; `spots` has each cavity's number, or is empty and `why` says why."""

    rows: int
    columns: int
    spots: Mapping[int, Spot]
    why: str


def cavities_of(connector: Connector) -> Cavities | None:
    """The face as it mates: what was counted from the wire side is mirrored. None when rows or columns are blank."""
    single = 1 in (connector.rows, connector.columns)
    rows = connector.rows or (connector.cavities if connector.columns == 1 else None)
    columns = connector.columns or (connector.cavities if connector.rows == 1 else None)
    if not rows or not columns or rows * columns > MOST:
        return None
    count = connector.cavities or (rows * columns if single else None)
    numbering = connector.numbering
    if numbering is None:
        return Cavities(rows, columns, {}, "how they are counted is not looked")
    if count is None:
        return Cavities(rows, columns, {}, "how many there are is not looked, so that a row may be short")
    if count != rows * columns:
        return Cavities(rows, columns, {}, f"{count} of them do not make {rows} full rows of {columns}")
    return Cavities(rows, columns, dict(enumerate(_counted(numbering, rows, columns), 1)), "")


def mirrored(connector: Connector) -> bool:
    """Whether the record was counted looking at the wires, so that its left is the mating face's right."""
    return connector.numbering is not None and connector.numbering.view == "wire entry"


def _counted(numbering: Numbering, rows: int, columns: int) -> Iterator[Spot]:
    """The spots in the order of their numbers."""
    across = (numbering.corner.endswith("right")) != (numbering.view == "wire entry")
    downward = _ends(rows, from_far=numbering.corner.startswith("lower"))
    sideways = _ends(columns, from_far=across)
    by_row = numbering.direction in ("row by row", "rows there and back")
    turning = numbering.direction.endswith("there and back")
    outer, inner = (downward, sideways) if by_row else (sideways, downward)
    for number, line in enumerate(outer):
        for along in reversed(inner) if turning and number % 2 else inner:
            yield (line, along) if by_row else (along, line)


def _ends(count: int, *, from_far: bool) -> range:
    return range(count, 0, -1) if from_far else range(1, count + 1)
