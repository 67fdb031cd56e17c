from typing import Any

from bezelbook.cli.wiring_text import wiring_lines
from bezelbook.reasoning.wiring_asked.answer import wiring_answer
from bezelbook.reasoning.wiring_asked.question import JobAsked, WiringQuestion
from tests.reasoning.circuits.a_car import CAR, DASH, LATE, after, book, connector, plug_in, seen, tee
from tests.reasoning.making import record


def lines(*records: Any, job: JobAsked = "replace the radio", splits: dict[str, str] | None = None) -> list[str]:
    question = WiringQuestion(CAR, (DASH,), (job,), LATE if splits is None else splits)
    return list(wiring_lines(wiring_answer(book(*records), question).plain()))


def test_an_answer_is_read_from_what_to_take_to_what_to_look_at() -> None:
    alike = connector("offset", looks_like=[{"connector": "square", "difference": "Rib."}])
    notes = (seen("one"), after("two", lost=["camera"]), after("three", lost=["clock"]), after("four", kept=["clock"]))
    found = lines(*notes, plug_in(), alike)
    assert found[0] == "Small van, late, base: replace the radio"
    text = "\n".join(found)
    assert "plug: The square, known (one)\n  not to be taken for The offset: Rib" in text
    assert "take 1: The plug-in, The square to bare leads" in text
    assert "not brought: reverse, park brake and speed; " in text
    assert "camera: lost in this build" in text
    assert "clock: argued over: some kept it and some lost it in this build (until settled: lost)" in text
    assert "not looked whether they are kept: wheel buttons" in text
    assert "not known: constant, ground, accessory and all speakers" in text


def test_builds_that_differ_are_told_from_the_seat() -> None:
    found = lines(seen("one", splits={"build": "late"}), plug_in(), splits={})
    assert "REPLACE THE RADIO, dash centre, early" in found
    assert "from the seat: early: Round vents; late: Square vents" in found


def test_a_job_with_an_amplifier_says_what_stands_beside_it() -> None:
    text = "\n".join(lines(seen("one"), tee(), job="keep it and amplify"))
    assert "a ground of its own" in text
    assert "Load resistors across" in text
    assert "missing: accessory; a fuse in the fuse box" in text


def test_a_radio_in_two_pieces_has_its_places_and_its_cable() -> None:
    display = {"name": "Display", "size_class": "two-piece display", "goes_with": ["box"]}
    box = record("head_units", "box", {"name": "Box", "size_class": "two-piece box"})
    found = lines(seen("one"), plug_in(), record("head_units", "display", display), box, job="two-piece radio")
    assert "Display in the dash centre: nobody has tried" in found
    assert "cable between the two: nobody has measured how long it is; never laid in this vehicle" in found


def test_nothing_unknown_is_said_and_nothing_to_take_is_not() -> None:
    ends = {"a": {"connector": "square", "side": "unit side"}, "b": {"connector": "old", "side": "vehicle side"}}
    wire = plug_in("wire", adapter_kind="aerial", ends=ends)
    aerial = seen("one", None, aerials=[{"plug": "square", "amplified": "not there"}])
    assert lines(wire, connector("old"), aerial, job="aerial")[-1] == "nothing unknown"
    assert "nothing unknown" not in lines(aerial, job="aerial")
