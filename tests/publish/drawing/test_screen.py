from fractions import Fraction

import pytest

from bezelbook.publish.drawing.screen import screen
from bezelbook.reasoning.screens.screen_at import Lying
from tests.publish.reading_html import Element, parsed
from tests.reasoning import making
from tests.reasoning.screens.dashes import control, floater, over, ruled

MM = 1_000  # of the drawing's micrometres


def lying(*controls: dict[str, str], **unit: str | None) -> Lying:
    found = over(floater(**unit), ruled(*controls)).lying
    assert found is not None
    return found


def drawn(of: Lying) -> Element:
    letters = "ABCDEFG"[: len(of.usable.overs)]
    [svg] = parsed(screen(of, letters, "what <it> covers")).all("svg", kind="outline")
    return svg


def box(of: Element) -> list[Fraction | int]:
    """Left, right, top and bottom of a rectangle, read back from its geometry in mm."""
    x, y, wide, high = (Fraction(of.attributes[name]) / MM for name in ("x", "y", "width", "height"))
    return [x, x + wide, y, y + high]


def opening(svg: Element) -> list[Fraction | int]:
    [found] = svg.all("rect", kind="opening")
    return box(found)


def middle(sides: list[Fraction | int]) -> tuple[Fraction, Fraction]:
    return Fraction(sides[0] + sides[1]) / 2, Fraction(sides[2] + sides[3]) / 2


def test_the_opening_and_the_screen_are_drawn_to_one_scale() -> None:
    """An opening of 180 x 101 mm, a screen of 240 x 140."""
    svg = drawn(lying(control()))
    left, right, top, bottom = opening(svg)
    assert (right - left, bottom - top) == (180, 101)
    [outline] = svg.all("rect", kind="screen")
    left, right, top, bottom = box(outline)
    assert (right - left, bottom - top) == (240, 140)


def test_the_screen_is_drawn_at_its_best_height() -> None:
    """A control 25 mm over the opening, a finger's room and every ± leave the middle 6.5 mm below."""
    found = lying(control(near="25 ± 1 mm"))
    svg = drawn(found)
    [outline] = svg.all("rect", kind="screen")
    (x, y), (screen_x, screen_y) = middle(opening(svg)), middle(box(outline))
    assert screen_x == x
    assert screen_y - y == Fraction("6.5") == -found.usable.best / 1_000_000


def test_both_ends_of_its_range_are_faint() -> None:
    svg = drawn(lying(control()))
    _, y = middle(opening(svg))
    assert sorted(middle(box(ghost))[1] - y for ghost in svg.all("rect", kind="ghost")) == [-20, 20]
    [low] = drawn(lying(control(near="5 ± 1 mm"))).all("rect", kind="ghost")
    assert middle(box(low))[1] < y


@pytest.mark.parametrize(
    ("edge", "place"),
    [
        ("top", (-30, 0, -80, -60)),
        ("bottom", (-30, 0, 60, 80)),
        ("left", (-120, -100, 10, 40)),
        ("right", (100, 120, 10, 40)),
    ],
)
def test_a_control_is_drawn_where_it_was_ruled(edge: str, place: tuple[int, ...]) -> None:
    """10 to 30 mm beyond the edge of an opening of 180 x 100, 60 to 90 along it; counted from its middle, down."""
    note = ruled(control(beyond=edge, near="10 ± 1 mm", far="30 ± 1 mm"), height="100 ± 1 mm")
    found = over(floater(), note).lying
    assert found is not None
    svg = drawn(found)
    (x, y), [shown] = middle(opening(svg)), svg.all("rect", kind="control")
    left, right, top, bottom = box(shown)
    assert [left - x, right - x, top - y, bottom - y] == list(map(Fraction, place))
    assert shown.attributes["data-control"] == "hazard switch"


def test_every_control_has_its_letter_in_its_middle() -> None:
    svg = drawn(lying(control("a"), control("b", beyond="bottom")))
    letters = {one.text: Fraction(one.attributes["x"]) / MM for one in svg.all("text")}
    shown = {one.attributes["data-control"]: middle(box(one))[0] for one in svg.all("rect", kind="control")}
    assert abs(letters["A"] - shown["a"]) < Fraction(1, 100)
    assert abs(letters["B"] - shown["b"]) < Fraction(1, 100)


def test_a_side_that_nobody_measured_runs_to_the_edge_of_the_drawing() -> None:
    svg = drawn(lying(control(starts=None, ends=None, far=None)))
    [shown] = svg.all("rect", kind="unsure")
    _, _, wide, _ = svg.attributes["viewbox"].split()
    left, right, top, _ = box(shown)
    assert (left, right * MM, top) == (0, int(wide), 0)


def test_a_leaning_screen_is_drawn_as_low_as_it_looks() -> None:
    above, below = control(near="18 ± 1 mm"), control(near="18 ± 1 mm", beyond="bottom")
    [outline] = drawn(lying(above, below, tilt_most="60 deg")).all("rect", kind="screen")
    _, _, top, bottom = box(outline)
    assert abs(Fraction(bottom - top) - 70) < Fraction(1, 100)


def test_a_length_to_compare_with_is_fifty_millimetres() -> None:
    [rule] = drawn(lying(control())).all("line", kind="length")
    assert int(rule.attributes["x2"]) - int(rule.attributes["x1"]) == 50 * MM


def test_the_middles_are_marked() -> None:
    svg = drawn(lying(control(near="25 ± 1 mm")))
    own, fixed = svg.all("line", kind="set"), svg.all("line", kind="middle")
    assert int(own[0].attributes["y1"]) - int(fixed[0].attributes["y1"]) == 6_500


def test_an_opening_that_nobody_measured_still_gives_a_drawing() -> None:
    blank = making.measured("blank", making.reading("nose width", "180 ± 1 mm"), controls=[control(beyond="left")])
    found = over(floater(), blank).lying
    assert found is not None
    assert drawn(found).all("title")[0].text == "what <it> covers"
