from typing import Any

import pytest

from bezelbook.kinds.connector.record import Connector
from bezelbook.reasoning.cavities import Cavities, cavities_of, mirrored
from tests.reasoning import making
from tests.reasoning.faces_by_hand import CORNERS, FROM_UPPER_LEFT, VIEWS, as_seen


def connector(**content: Any) -> Connector:
    made: Connector = making.record("connectors", "plug", {"name": "Plug", "shell": "square", **content})
    return made


def pictured(cavities: Cavities | None) -> tuple[str, ...]:
    assert cavities is not None
    at = {spot: str(number) for number, spot in cavities.spots.items()}
    return tuple(
        "".join(at[row, column] for column in range(1, cavities.columns + 1)) for row in range(1, cavities.rows + 1)
    )


@pytest.mark.parametrize("direction", FROM_UPPER_LEFT)
@pytest.mark.parametrize("corner", CORNERS)
@pytest.mark.parametrize("view", VIEWS)
def test_a_face_is_counted_from_its_corner_and_a_wire_side_is_its_mirror_image(
    direction: str, corner: str, view: str
) -> None:
    numbering = {"direction": direction, "corner": corner, "view": view}
    plug = connector(rows=2, columns=3, cavities=6, numbering=numbering)
    assert pictured(cavities_of(plug)) == as_seen(direction, corner, view)
    assert mirrored(plug) == (view == "wire entry")


COUNTED = {"corner": "upper-left", "view": "mating face", "direction": "row by row"}


@pytest.mark.parametrize(
    ("content", "why"),
    [
        ({"rows": 2, "columns": 3, "cavities": 6}, "how they are counted is not looked"),
        (
            {"rows": 2, "columns": 3, "numbering": COUNTED},
            "how many there are is not looked, so that a row may be short",
        ),
        ({"rows": 2, "columns": 3, "cavities": 5, "numbering": COUNTED}, "5 of them do not make 2 full rows of 3"),
        ({"rows": 2, "columns": 3, "cavities": 7, "numbering": COUNTED}, "7 of them do not make 2 full rows of 3"),
    ],
)
def test_where_nobody_can_say_which_is_which_no_cavity_has_a_number(content: dict[str, Any], why: str) -> None:
    assert cavities_of(connector(**content)) == Cavities(2, 3, {}, why)
    assert not mirrored(connector())


@pytest.mark.parametrize(
    ("content", "picture"),
    [
        ({"rows": 1, "cavities": 3}, ("123",)),
        ({"rows": 1, "columns": 3}, ("123",)),
        ({"columns": 1, "cavities": 3}, ("1", "2", "3")),
        ({"columns": 1, "rows": 3}, ("1", "2", "3")),
    ],
)
def test_a_single_row_or_column_is_full(content: dict[str, Any], picture: tuple[str, ...]) -> None:
    face = cavities_of(connector(numbering=COUNTED, **content))
    assert pictured(face) == picture
    assert face is not None
    assert face.why == ""


@pytest.mark.parametrize(
    "content",
    [
        {},
        {"cavities": 24},
        {"rows": 2, "cavities": 24},
        {"columns": 12, "cavities": 24},
        {"rows": 1},
        {"rows": 0, "columns": 3},
        {"rows": 99, "columns": 99},
        {"rows": 20, "columns": 21},
    ],
)
def test_without_its_rows_and_columns_there_is_no_face(content: dict[str, Any]) -> None:
    assert cavities_of(connector(numbering=COUNTED, **content)) is None
    assert cavities_of(connector(numbering=COUNTED, rows=20, columns=20)) is not None, "that is the largest"
