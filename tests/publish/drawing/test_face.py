from typing import Any

import pytest

from bezelbook.kinds.connector.record import Connector
from bezelbook.publish.drawing.face import face, face_words
from tests.publish.reading_html import Element, parsed
from tests.reasoning import making
from tests.reasoning.faces_by_hand import CORNERS, FROM_UPPER_LEFT, VIEWS, as_seen

COUNTED = {"corner": "upper-left", "view": "mating face", "direction": "row by row"}
SIX = {"rows": 2, "columns": 3, "cavities": 6}
SIZES = {"width": "20 mm caliper", "height": "15 mm caliper", "terminals": {"pitch": "4 mm", "row_pitch": "6 mm"}}
Point = tuple[float, float]


def connector(**content: Any) -> Connector:
    made: Connector = making.record("connectors", "plug", {"name": "Plug", "shell": "square", **content})
    return made


def drawn(plug: Connector) -> Element:
    svg = face(plug)
    assert svg is not None
    [element] = parsed(svg).all("svg", kind="face")
    return element


def middle(rect: Element) -> Point:
    x, y, width, height = (int(rect.attributes[name]) for name in ("x", "y", "width", "height"))
    return x + width / 2, y + height / 2


def numbered(svg: Element) -> dict[str, Point]:
    """Where each number stands, which must be the middle of a cavity that says so."""
    found = {}
    for cell in svg.all("g"):
        if "data-cavity" not in cell.attributes:
            continue
        [square], [words] = cell.all("rect"), cell.all("text")
        assert words.text == cell.attributes["data-cavity"]
        assert (float(words.attributes["x"]), float(words.attributes["y"])) == middle(square)
        found[words.text] = middle(square)
    return found


def read_back(svg: Element) -> tuple[str, ...]:
    """The numbers row by row, from the places of the words alone."""
    at = numbered(svg)
    heights = sorted({y for _, y in at.values()})
    return tuple("".join(sorted((n for n in at if at[n][1] == y), key=lambda n: at[n][0])) for y in heights)


@pytest.mark.parametrize("direction", FROM_UPPER_LEFT)
@pytest.mark.parametrize("corner", CORNERS)
@pytest.mark.parametrize("view", VIEWS)
def test_the_numbers_stand_where_a_hand_counts_them(direction: str, corner: str, view: str) -> None:
    numbering = {"direction": direction, "corner": corner, "view": view}
    plug = connector(**SIX, **SIZES, numbering=numbering)
    svg = drawn(plug)
    assert read_back(svg) == as_seen(direction, corner, view)
    said = [words for words in face_words(plug) if "mirror image" in words]
    assert bool(said) == (view == "wire entry")
    [title] = svg.all("title")
    assert all(words in title.text for words in said)
    rows = [words.rpartition(": ")[2].replace(" ", "") for words in face_words(plug) if words.startswith("row ")]
    assert tuple(rows) == as_seen(direction, corner, view)


def test_every_cavity_says_its_row_and_column() -> None:
    svg = drawn(connector(**SIX, **SIZES, numbering=COUNTED))
    told = {
        cell.attributes["data-cavity"]: (cell.attributes["data-row"], cell.attributes["data-column"])
        for cell in svg.all("g")
    }
    assert told == {
        "1": ("1", "1"),
        "2": ("1", "2"),
        "3": ("1", "3"),
        "4": ("2", "1"),
        "5": ("2", "2"),
        "6": ("2", "3"),
    }
    assert (svg.attributes["data-rows"], svg.attributes["data-columns"]) == ("2", "3")


def test_the_face_and_the_distances_are_to_scale() -> None:
    plug = connector(**SIX, **SIZES, numbering=COUNTED)
    at = numbered(drawn(plug))
    assert at["2"][0] - at["1"][0] == 4_000
    assert at["4"][1] - at["1"][1] == 6_000
    [shell] = drawn(plug).all("rect", kind="shell")
    assert (shell.attributes["width"], shell.attributes["height"]) == ("20000", "15000")
    centre = ((at["1"][0] + at["6"][0]) / 2, (at["1"][1] + at["6"][1]) / 2)
    assert centre == middle(shell)
    assert "to scale" in face_words(plug)


def test_where_nobody_knows_the_count_the_cavities_have_no_numbers_and_that_is_said() -> None:
    plug = connector(**SIX, **SIZES)
    svg = drawn(plug)
    assert len(svg.all("rect", kind="cavity")) == 6
    assert svg.all("text") == []
    assert "no numbers in its cavities: how they are counted is not looked" in face_words(plug)


def test_without_rows_and_columns_nothing_is_drawn_and_that_is_said() -> None:
    assert face(connector(cavities=24)) is None
    assert face_words(connector(cavities=24)) == ("no drawing: its rows and columns are not looked at",)


def side_of(mark: Element, shell: Element) -> str:
    """On which side of the shell a mark is drawn, by its geometry."""
    (x, y), (left, top) = middle(mark), (int(shell.attributes["x"]), int(shell.attributes["y"]))
    right, bottom = left + int(shell.attributes["width"]), top + int(shell.attributes["height"])
    return {
        (False, True): "top" if y < top else "bottom",
        (True, False): "left" if x < left else "right",
    }[not left < x < right, not top < y < bottom]


KEYS = [
    {"kind": "rib", "side": "left", "reads": "3 mm off"},
    {"kind": "slot", "side": "top"},
    {"kind": "key letter", "side": "top", "reads": "A"},
    {"kind": "offset key", "side": "right"},
    {"kind": "key colour", "reads": "green"},
]


@pytest.mark.parametrize(("view", "rib", "key"), [("mating face", "left", "right"), ("wire entry", "right", "left")])
def test_keys_and_latch_are_on_their_side_of_the_face_that_mates(view: str, rib: str, key: str) -> None:
    latch = {"kind": "thumb latch", "side": "bottom"}
    plug = connector(**SIX, keying=KEYS, latch=latch, numbering={**COUNTED, "view": view})
    svg = drawn(plug)
    [shell] = svg.all("rect", kind="shell")
    marks = {one.attributes["data-mark"]: one for one in svg.all("g") if "data-mark" in one.attributes}
    sides = {"rib": rib, "slot": "top", "key letter": "top", "offset key": key, "thumb latch": "bottom"}
    assert {name: side_of(mark.all("rect")[0], shell) for name, mark in marks.items()} == sides
    assert {name: mark.attributes["data-side"] for name, mark in marks.items()} == sides
    assert {name: mark.all("text")[0].text for name, mark in marks.items()} == {name: name for name in sides}
    assert middle(marks["slot"].all("rect")[0])[0] < middle(marks["key letter"].all("rect")[0])[0]
    words = face_words(plug)
    assert f"rib 3 mm off: on the {rib}" in words
    assert "key colour green: on which side is not looked" in words


@pytest.mark.parametrize(
    ("content", "said"),
    [
        ({}, {"keys: not looked", "latch: not looked"}),
        ({"keying": "not there", "latch": "not there"}, {"keys: not there", "latch: not there"}),
        ({"shell": "T"}, {"its outline is T, drawn as a plain box"}),
        ({}, {"not to scale: no size to draw by for width, pitch, height, row pitch"}),
        ({"side": "unit side"}, {"the face that mates, unit side"}),
        ({}, {"the face that mates, of which half is not looked"}),
    ],
)
def test_what_nobody_looked_at_is_said(content: dict[str, Any], said: set[str]) -> None:
    assert said <= set(face_words(connector(**SIX, **content)))


def test_whatever_an_author_typed_is_text() -> None:
    hostile = '"><script>alert(1)</script>'
    plug = connector(**SIX, name=hostile, keying=[{"kind": "rib", "side": "top", "reads": hostile}])
    svg = drawn(plug)
    assert svg.all("script") == []
    assert svg.all("title")[0].text.count(hostile) == 2
