from bezelbook.publish.drawing.chain import Run, chain_drawing
from tests.publish.reading_html import Element, parsed

RUNS = (
    Run("constant", "used", 0, 2),
    Run("accessory", "used", 1, 2),
    Run("bus", "unknown", 0, 1, "cap"),
    Run("left front ±", "used", 0, 2, "cut"),
    Run("reverse <x>", "not there", 0, 1, "blank"),
)


def drawn() -> Element:
    [svg] = parsed(chain_drawing(("the car", "1", "the radio"), RUNS, "Replace")).all("svg", kind="wires")
    return svg


def test_every_bar_stands_once_from_left_to_right_with_its_name() -> None:
    bars = [float(bar.attributes["x1"].removesuffix("%")) for bar in drawn().all("line", kind="bar")]
    assert bars == [4.0, 50.0, 96.0]
    assert [head.text for head in drawn().all("text", kind="head")] == ["the car", "1", "the radio"]


def test_a_wire_runs_from_its_bar_to_its_bar() -> None:
    wires = {
        tuple(float(wire.attributes[end].removesuffix("%")) for end in ("x1", "x2"))
        for wire in drawn().all("line", kind="wire")
    }
    assert wires == {(4.0, 96.0), (50.0, 96.0), (4.0, 50.0)}


def test_how_a_wire_ends_can_be_seen_without_its_colour() -> None:
    assert len(drawn().all("circle", kind="source")) == 1
    assert len(drawn().all("line", kind="cap")) == 1
    assert len(drawn().all("rect", kind="cut")) == 1
    assert [one.text for one in drawn().all("text", kind="blank")] == ["×"]


def test_each_circuit_has_a_row_of_its_own_and_is_said_in_words() -> None:
    heights = [int(label.attributes["y"]) for label in drawn().all("text", kind="label")]
    assert heights == sorted(set(heights))
    assert len(heights) == len(RUNS)
    [title] = drawn().all("title")
    assert (
        title.text
        == "Replace. constant: used; accessory: used; bus: unknown; left front ±: used; reverse <x>: not there"
    )
