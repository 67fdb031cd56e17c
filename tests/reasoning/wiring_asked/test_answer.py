from typing import Any

from bezelbook.reasoning.wiring_asked.answer import NO_PAIR, wiring_answer
from bezelbook.reasoning.wiring_asked.plain import PlainWiring
from bezelbook.reasoning.wiring_asked.question import JobAsked, WiringQuestion
from tests.reasoning.circuits.a_car import CAR, DASH, DOOR, book, plug_in, seen
from tests.reasoning.circuits.test_two_piece import box, display, van

LATE = {"build": "late"}


def answered(*records: Any, jobs: tuple[JobAsked, ...] = ("replace the radio",), **content: Any) -> PlainWiring:
    places = (DOOR,) if "speaker lead" in jobs else (DASH,)
    return wiring_answer(book(*records), WiringQuestion(CAR, places, jobs, **content)).plain()


def test_it_says_for_what_it_holds() -> None:
    found = answered(splits=LATE, year=3, jobs=("keep it and amplify", "add a sub"))
    assert found["for"] == "Small van, late, year 3: keep the radio, amplify the fronts or keep the radio, add a sub"
    assert (found["vehicle"], found["splits"]) == (CAR, LATE)
    assert [one["job"] for one in found["answers"]] == ["keep it and amplify", "add a sub"]


def test_builds_to_which_the_same_is_said_are_one_and_the_others_are_told_from_the_seat() -> None:
    early, late = answered(seen("one", splits=LATE), plug_in())["answers"]
    assert (early["builds_words"], late["builds_words"]) == ("early", "late")
    assert late["tell"] == "early: Round vents; late: Square vents"
    assert late["builds"] == [LATE | {"audio": "base"}, LATE | {"audio": "upgraded"}]
    assert (early["verdict"], late["verdict"]) == ("plug not looked", "complete if")


def test_where_all_builds_are_alike_there_is_nothing_to_tell() -> None:
    [one] = answered()["answers"]
    assert (one["builds_words"], one["tell"]) == ("", "")


def test_every_job_has_its_answer() -> None:
    assert answered(jobs=("aerial",))["answers"][0]["verdict"] == "plug not looked"
    assert answered(jobs=("speaker lead",))["answers"][0]["place"] == DOOR
    [one] = answered(jobs=("two-piece radio",))["answers"]
    assert (one["verdict"], one["words"]) == ("nothing mates", NO_PAIR)


def test_a_radio_in_two_pieces_is_answered_for_each_pair_of_the_book() -> None:
    pair = (display(), box(goes_with=["display"]))
    found = answered(van(), seen("one"), plug_in(), *pair, jobs=("two-piece radio",))["answers"]
    assert found
    assert "nothing mates" not in {one["verdict"] for one in found}
