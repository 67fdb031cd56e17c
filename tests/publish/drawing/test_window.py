"""The drawing of the rings that would do: its numbers can be read back from its geometry."""

from fractions import Fraction

import pytest

from bezelbook.publish.drawing.svg import MM
from bezelbook.publish.drawing.window import Lane, windows
from tests.publish.reading_html import Element, parsed

RINGS = (("ten", 10 * MM, "too close"), ("half inch", 12_700_000, "goes in"))


def drawn(*lanes: Lane) -> Element:
    found = windows(lanes, "Rings at the door")
    assert found is not None
    [svg] = parsed(found).all("svg", kind="section")
    return svg


def at(svg: Element, percent: str) -> int:
    """A place along the scale, in nanometres."""
    return round(Fraction(percent.removesuffix("%")) * int(svg.attributes["data-end"]) / 100)


def ends(svg: Element, bar: Element) -> tuple[int, int]:
    low, wide = (at(svg, bar.attributes[name]) for name in ("x", "width"))
    return low, low + wide


def test_a_bar_reaches_from_the_thinnest_ring_to_the_thickest() -> None:
    svg = drawn(Lane("deep", (9_040_000, 1_200_000), (14_040_000, 1_200_000), RINGS))
    [bar] = svg.all("rect", kind="open")
    assert (bar.attributes["data-from"], bar.attributes["data-to"]) == ("9040000", "14040000")
    assert ends(svg, bar) == pytest.approx((9_040_000, 14_040_000), abs=100)
    unsure = [ends(svg, one) for one in svg.all("rect", kind="between")]
    assert unsure == [pytest.approx((7_840_000, 10_240_000), abs=100), pytest.approx((12_840_000, 15_240_000), abs=100)]


def test_each_ring_stands_where_it_is_thick() -> None:
    svg = drawn(Lane("deep", (9_040_000, 0), (14_040_000, 0), RINGS))
    found = {}
    for ring in svg.all("g"):
        [mark] = ring.all("line")
        found[ring.attributes["data-ring"]] = (at(svg, mark.attributes["x1"]), mark.attributes["class"])
    assert found == {"ten": (10 * MM, "stop"), "half inch": (12_700_000, "good")}


def test_lanes_lie_under_one_another_on_one_scale() -> None:
    one = Lane("one", (2 * MM, 0), (5 * MM, 0), RINGS)
    svg = drawn(one, Lane("two", (3 * MM, 0), (90 * MM, 0), RINGS))
    tops = [int(bar.attributes["y"]) for bar in svg.all("rect", kind="open")]
    assert tops == sorted(set(tops))
    assert int(svg.attributes["data-end"]) == 40 * MM
    assert int(drawn(one).attributes["data-end"]) == 20 * MM


def test_what_lies_beyond_the_scale_ends_at_its_edge() -> None:
    svg = drawn(Lane("flat", (-8 * MM, MM), (90 * MM, MM), ()))
    [bar] = svg.all("rect", kind="open")
    assert ends(svg, bar) == (0, int(svg.attributes["data-end"]))
    assert svg.all("rect", kind="between") == []


def test_an_end_that_nobody_measured_is_drawn_as_a_blank_and_said() -> None:
    svg = drawn(Lane("half known", (9 * MM, 0), None, RINGS))
    assert svg.all("rect", kind="open") == []
    [bar] = svg.all("rect", kind="blank")
    assert ends(svg, bar)[0] == 9 * MM
    titles = [one.text for one in svg.all("title")]
    assert titles[0] == "Rings at the door: half known from 9 mm to not looked"
    [bar] = drawn(Lane("other", None, (9 * MM, 0), ())).all("rect", kind="blank")
    assert bar.attributes["data-from"] == "0"


def test_an_empty_window_has_no_bar() -> None:
    svg = drawn(Lane("none", (14 * MM, MM), (9 * MM, MM), RINGS))
    assert svg.all("rect", kind="open") == []
    assert len(svg.all("rect", kind="between")) == 2


def said(lane: Lane) -> str:
    return str(drawn(lane).all("title")[0].text).removeprefix("Rings at the door: ")


def test_where_no_ring_does_it_says_so_instead_of_counting_backwards() -> None:
    both = said(Lane("tight", (12 * MM, MM), (11 * MM, MM), RINGS))
    assert both == "tight no ring does: 12 mm is wanted behind, and in front there is room for 11 mm"
    proud = said(Lane("proud", None, (-3 * MM, MM), RINGS))
    assert proud == "proud no ring does: it stands out too far even without one"
    assert said(Lane("any", (-3 * MM, MM), (11 * MM, MM), RINGS)) == "any from 0 mm to 11 mm"


def test_a_ring_with_which_it_goes_in_has_a_head() -> None:
    svg = drawn(Lane("deep", (9 * MM, 0), (14 * MM, 0), RINGS))
    heads = {ring.attributes["data-ring"]: len(ring.all("circle")) for ring in svg.all("g")}
    assert heads == {"ten": 0, "half inch": 1}


def test_no_lane_is_no_drawing() -> None:
    assert windows((), "Rings") is None
