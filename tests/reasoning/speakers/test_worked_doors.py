"""The trade's worked doors (trade.md 4.4 and 13; common practice, no source), as the book of doors holds them.

A speaker 63 deep and 12 high; foam of 1.6 at 40 %; left glass 58, right 55; 30 to the panel in front on either side.
"""

from collections.abc import Mapping
from pathlib import Path
from typing import Any

import pytest

from bezelbook.kinds.record import Record
from bezelbook.knowledge_base import KnowledgeBase, knowledge_base
from bezelbook.reasoning.asking import read_question
from bezelbook.reasoning.speakers.answer import SpeakerAnswer, speaker_answer
from bezelbook.reasoning.speakers.question import SpeakerQuestion
from bezelbook.store.book import load_book
from tests.reasoning.making import changed, record

MM = 1_000_000
Doors = Mapping[str, Record]


@pytest.fixture(scope="module")
def doors(books: Path) -> Doors:
    loaded = load_book(books / "doors")
    assert loaded.complaints == ()
    return {record.id: record for record in loaded.records}


def measured_right(doors: Doors, glass: str = "55 ± 1 mm") -> Record:
    """The right door, once somebody measured it."""
    readings = [
        {"of": "cut-out", "reads": "151 ± 0.5 mm", "tool": "caliper"},
        {"of": "rear depth to glass down", "reads": glass, "datum": "door metal", "tool": "putty"},
        {"of": "front clearance", "reads": "30 ± 1 mm", "datum": "door metal", "tool": "putty"},
    ]
    said = {"form": "measured", "vehicle": "compact-hatch-2", "place": "front-door-right", "mounts": "none"}
    made: Record = record("notes", "right-measured", {**said, "author": "tm", "readings": readings})
    return made


def book(doors: Doors, *others: Record) -> KnowledgeBase:
    return knowledge_base([*doors.values(), *others])


def ask(of: KnowledgeBase, side: str, *rings: str, what: Any = "deep-sixty-three", **state: Any) -> SpeakerAnswer:
    put = {"mounts": list(rings) or None, "gasket": "thin-foam", **state}
    data = {"vehicle": "compact-hatch-2", "place": f"front-door-{side}", "what": what, "state": put}
    question = read_question(of, data).read
    assert isinstance(question, SpeakerQuestion)
    return speaker_answer(of, question)


def left_over(found: SpeakerAnswer) -> float:
    assert found.spot is not None
    return found.spot.left / MM


@pytest.mark.parametrize(
    ("side", "ring", "verdict"),
    [
        ("left", "ten-ring", "goes in"),
        ("right", "ten-ring", "too close"),
        ("left", "half-inch-ring", "goes in"),
        ("right", "half-inch-ring", "goes in"),
        ("left", "eighteen-ring", "too close"),
        ("right", "eighteen-ring", "too close"),
    ],
)
def test_each_ring_on_each_side(doors: Doors, side: str, ring: str, verdict: str) -> None:
    assert ask(book(doors, measured_right(doors)), side, ring).verdict == verdict


@pytest.mark.parametrize(
    ("side", "ring", "size", "left"),
    [
        ("left", "ten-ring", "glass", 5.96),
        ("right", "ten-ring", "glass", 2.96),
        ("right", "half-inch-ring", "glass", 5.66),
        ("left", "half-inch-ring", "front", 4.34),
        ("left", "eighteen-ring", "front", -0.96),
        ("right", "eighteen-ring", "front", -0.96),
    ],
)
def test_the_number_that_decides_is_the_trade_s(doors: Doors, side: str, ring: str, size: str, left: float) -> None:
    found = ask(book(doors, measured_right(doors)), side, ring)
    assert found.spot is not None
    assert found.spot.size == size
    assert left_over(found) == pytest.approx(left, abs=1e-9)


def test_an_assumed_side_is_no_reading(doors: Doors) -> None:
    found = ask(book(doors), "right", "half-inch-ring")
    assert found.verdict == "nobody has tried"
    assert ask(book(doors), "left", "half-inch-ring").verdict == "goes in"
    missing = {one.what: one.look for one in found.unknown}
    assert "5 min" in missing["this side was only assumed to be the same, in left-measured"]
    assert "depth gauge or putty" in missing["the depth to the glass was never measured on this side"]


def test_a_side_that_was_measured_the_same_has_those_readings(doors: Doors) -> None:
    same = changed(doors["left-measured"], other_side="measured the same")
    assert ask(book(doors, same), "right", "half-inch-ring").verdict == "goes in"


def test_without_a_ring_it_does_not_and_any_good_ring_would_do(doors: Doors) -> None:
    assert ask(book(doors), "left", mounts="none").verdict == "does not"
    found = ask(book(doors), "left")
    assert (found.verdict, found.needs[:2]) == (
        "goes in if",
        ("it is fitted with Half-inch ring", "it is fitted with Ten ring"),
    )


def test_the_bracket_takes_it_only_with_its_tabs_out_for_good(doors: Doors) -> None:
    basket = {"basket": "141 mm"}
    found = ask(book(doors), "left", "tab-bracket", what=basket)
    assert found.verdict == "goes in if"
    assert "broken out, which cannot be undone" in found.needs[0]
    assert "up to 142 mm" in found.needs[0]
    verdicts = [ask(book(doors), "left", "tab-bracket", what=basket, tabs=tabs).verdict for tabs in ("in", "out")]
    assert verdicts == ["does not", "goes in"]
    assert (
        "cannot be undone: Break out the tabs" in ask(book(doors), "left", "tab-bracket", what=basket, tabs="out").needs
    )


@pytest.mark.parametrize(
    ("basket", "verdict"), [("142 mm", "goes in"), ("142.5 mm", "too close"), ("143.2 mm", "does not")]
)
def test_142_is_the_limit_with_the_tabs_out(doors: Doors, basket: str, verdict: str) -> None:
    found = ask(book(doors), "left", "tab-bracket", what={"basket": basket}, tabs="out")
    assert found.verdict == verdict


def bolt_lines(of: KnowledgeBase) -> list[str]:
    """What the answer says of plates and screw holes."""
    return [line for line in ask(of, "left", "half-inch-ring").needs if "plate" in line or "screw holes" in line]


def test_110_from_hole_to_hole_meets_a_circle_of_156(doors: Doors) -> None:
    assert bolt_lines(book(doors)) == []


def test_110_called_a_bolt_circle_reads_like_the_way_from_hole_to_hole(doors: Doors) -> None:
    left = doors["left-measured"]
    readings = left.model_dump(mode="json", exclude_none=True, exclude_unset=True)["readings"]
    called = [one | {"of": "bolt circle"} if one["of"] == "hole spacing" else one for one in readings]
    [line] = bolt_lines(book(doors, changed(left, readings=called)))
    assert line.startswith("look at the screw holes first: what is called a bolt circle reads like the way from hole")


def test_three_holes_into_four_want_a_plate(doors: Doors) -> None:
    three = changed(doors["deep-sixty-three"], bolts={"count": 3, "circle": "156 mm caliper"})
    assert bolt_lines(book(doors, three)) == ["a plate, or new holes: 3 holes into 4: 1 of them can land"]


def test_the_screws_go_through_flange_gasket_and_ring(doors: Doors) -> None:
    # 4 + 0.96 + 12.7, and 0.4 that the caliper may be off, before they bite 4 mm of a clip nut.
    [line] = [line for line in ask(book(doors), "left", "half-inch-ring").needs if line.startswith("screws")]
    assert line == "screws from 22.1 mm (0.87 in) (clip nut; 18.1 mm lies under the head)"


def test_a_typed_bolt_circle_is_compared_with_the_doors_holes(doors: Doors) -> None:
    """The door's 110 between four neighbours is a circle of 155.6 (trade.md 4.5), so that 156 meets it."""
    book = knowledge_base(tuple(doors.values()))
    data = {"vehicle": "compact-hatch-2", "place": "front-door-left"}

    def told(circle: str) -> str:
        read = read_question(book, {**data, "what": {"mounting_depth": "50 mm", "bolt_circle": circle}}).read
        assert isinstance(read, SpeakerQuestion)
        return next(line for line in speaker_answer(book, read).needs if line.startswith("bolt circle"))

    # How many holes it has was not said, so that the circles agreeing settles nothing yet.
    assert told("156 mm") == "bolt circle 156 mm: the number of holes is not looked"
    assert told("165 mm") == "bolt circle 165 mm: the bolt circles differ"
