from fractions import Fraction

from bezelbook.publish.drawing.section import section
from bezelbook.publish.drawing.svg import MM, Scale
from bezelbook.publish.ninths import Depth
from bezelbook.values.words import NINTHS
from tests.publish.reading_html import Element, parsed

SCALE = Scale(290 * MM)


def drawn() -> Element:
    nine = [Depth(ninth, 202 * MM, 208 * MM, "") for ninth in NINTHS[:6]]
    nine += [
        Depth("lower-left", 147 * MM, 153 * MM, "heater <duct>"),
        Depth("lower", 0, None, ""),
        Depth("lower-right", 0, 90 * MM, ""),
    ]
    [svg] = parsed(section(nine, SCALE, "late", "mm")).all("svg", kind="section")
    return svg


def end_of(element: Element) -> Fraction:
    """Where a lane ends, read back from its geometry, in nanometres."""
    start, width = (Fraction(element.attributes[name].removesuffix("%")) for name in ("x", "width"))
    return (start + width) * SCALE.end / 100


def test_each_lane_is_as_long_as_its_ninth_is_deep() -> None:
    lanes = {lane.attributes["data-ninth"]: lane for lane in drawn().all("rect") if "data-ninth" in lane.attributes}
    assert tuple(lanes) == NINTHS
    depths = {ninth: end_of(lane) for ninth, lane in lanes.items()}
    assert abs(depths["upper"] - 202 * MM) < 400
    assert abs(depths["lower-left"] - 147 * MM) < 400
    heights = [int(lane.attributes["y"]) for lane in lanes.values()]
    assert heights == sorted(set(heights))


def test_a_ninth_that_nobody_measured_is_drawn_as_a_blank() -> None:
    [blank] = drawn().all("rect", kind="blank")
    assert blank.attributes["data-ninth"] == "lower"
    assert end_of(blank) == SCALE.end
    assert "lower: not looked" in [one.text for one in drawn().all("text")]


def test_what_stops_it_is_named_behind_the_strip_it_lies_in() -> None:
    [named] = drawn().all("text", kind="stopper")
    assert named.text == "heater <duct>"
    assert abs(Fraction(named.attributes["x"].removesuffix("%")) * SCALE.end / 100 - 153 * MM) < 400
    between = [one for one in drawn().all("rect", kind="between") if one.attributes["data-to"] == str(153 * MM)]
    assert [one.attributes["data-from"] for one in between] == [str(147 * MM)]


def test_every_depth_is_said_in_the_text_alternative() -> None:
    [title] = drawn().all("title")
    assert "lower-left 150 mm (5.91 in) ± 3 mm to the heater <duct>" in title.text
    assert "lower not looked" in title.text
    assert title.text.count(";") == 8
