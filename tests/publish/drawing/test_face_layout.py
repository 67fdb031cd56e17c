from typing import Any

import pytest

from bezelbook.kinds.connector.record import Connector
from bezelbook.publish.drawing.face_layout import Layout, Mark, layout_of, marks_of
from bezelbook.reasoning.cavities import cavities_of
from tests.reasoning import making


def connector(**content: Any) -> Connector:
    made: Connector = making.record("connectors", "plug", {"name": "Plug", "shell": "square", **content})
    return made


def layout(rows: int, columns: int, **content: Any) -> Layout:
    plug = connector(rows=rows, columns=columns, **content)
    cavities = cavities_of(plug)
    assert cavities is not None
    return layout_of(plug, cavities)


WHOLE = {"width": "41.2 mm caliper", "height": "25.6 mm", "terminals": {"pitch": "2.5 mm", "row_pitch": "4 mm"}}


@pytest.mark.parametrize(
    ("content", "expected"),
    [
        (WHOLE, Layout(41_200, 25_600, 2_500, 4_000, ())),
        # Row to row is as far as next to next, unless it says otherwise.
        (WHOLE | {"terminals": {"pitch": "2.5 mm"}}, Layout(41_200, 25_600, 2_500, 2_500, ())),
        (WHOLE | {"terminals": {}}, Layout(41_200, 25_600, 3_169, 8_533, ("pitch", "row pitch"))),
        ({}, Layout(33_000, 8_000, 2_500, 2_500, ("width", "pitch", "height", "row pitch"))),
        ({"terminals": {"pitch": "1/8 in"}}, Layout(41_100, 9_350, 3_175, 3_175, ("width", "height"))),
        # Twelve of them 5 mm apart do not go into 41.2 mm.
        (WHOLE | {"terminals": {"pitch": "5 mm"}}, Layout(41_200, 25_600, 3_169, 5_000, ("pitch",))),
        # No face has such a size.
        (WHOLE | {"width": "4 m"}, Layout(33_000, 25_600, 2_500, 4_000, ("width",))),
        (WHOLE | {"height": "0 mm"}, Layout(41_200, 11_000, 2_500, 4_000, ("height",))),
    ],
)
def test_a_face_is_drawn_by_its_sizes_and_what_is_guessed_is_named(content: dict[str, Any], expected: Layout) -> None:
    assert layout(2, 12, **content) == expected


def test_a_single_row_needs_no_distance_to_the_next() -> None:
    assert layout(1, 20, width="62.5 mm", height="9.8 mm", terminals={"pitch": "3 mm"}).guessed == ()
    assert layout(20, 1, width="9.8 mm", height="62.5 mm", terminals={"row_pitch": "3 mm"}).guessed == ()


def test_marks_are_the_keys_and_the_latch() -> None:
    keys = [{"kind": "rib", "side": "left", "reads": "high"}, {"kind": "slot"}]
    plug = connector(keying=keys, latch={"kind": "lever", "side": "top"})
    assert marks_of(plug) == (
        Mark("rib", "rib high", "left"),
        Mark("slot", "slot", None),
        Mark("lever", "lever", "top"),
    )
    assert marks_of(connector()) == marks_of(connector(keying="not there", latch="not looked")) == ()


@pytest.mark.parametrize(
    ("typed", "seen"), [("left", "right"), ("right", "left"), ("top", "top"), ("bottom", "bottom")]
)
def test_what_was_looked_at_from_behind_is_turned_over(typed: str, seen: str) -> None:
    numbering = {"corner": "upper-left", "view": "wire entry", "direction": "row by row"}
    [mark] = marks_of(connector(latch={"kind": "lever", "side": typed}, numbering=numbering))
    assert mark.side == seen


@pytest.mark.parametrize(("view", "theirs"), [("mating face", ""), ("wire entry", " as seen from the wires")])
def test_a_left_that_was_typed_is_the_left_of_whoever_typed_it(view: str, theirs: str) -> None:
    numbering = {"corner": "upper-left", "view": view, "direction": "row by row"}
    keys = [{"kind": "slot", "reads": "third from the Left"}, {"kind": "key letter", "reads": "A"}]
    words = [mark.words for mark in marks_of(connector(keying=keys, numbering=numbering))]
    assert words == [f"slot third from the Left{theirs}", "key letter A"]
