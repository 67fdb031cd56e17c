from bezelbook.reasoning.unknowns import Missing
from bezelbook.reasoning.wiring_asked.parts import NO_LOOK, missing_of, nothing_of, plugs_of
from tests.reasoning.circuits.a_car import DASH, LATE, car, connector, seen


def test_an_empty_answer_is_for_one_build_of_one_place() -> None:
    found = nothing_of(car(), "aerial", "plug not looked", "nobody knows")
    assert (found["place"], found["builds"], found["words"]) == (DASH, [LATE], "nobody knows")
    assert (found["pieces"], found["unknown"], found["cable"]) == ([], [], None)


def test_a_plug_says_what_it_must_not_be_taken_for() -> None:
    [plug] = plugs_of(car(seen("one"), connector("other")))
    assert plug["not_to_be_taken_for"] == [f"The other: {NO_LOOK}"]
    [strange] = plugs_of(car(seen("one", "purple one")))
    assert (strange["plug"], strange["not_to_be_taken_for"]) == ("purple one", [])


def test_what_is_missing_is_said_with_where_to_look() -> None:
    assert missing_of([Missing("a", "b", "c")]) == [{"what": "a", "look": "b", "changes": "c"}]
