"""What an answer about a speaker says beside its verdict, word by word."""

from typing import Any

from bezelbook.reasoning.speakers.answer import speaker_answer
from bezelbook.reasoning.speakers.question import SpeakerQuestion
from tests.reasoning.speakers.doors import (
    BUILDS,
    CAR,
    DOOR,
    DOORS,
    ask,
    book,
    car,
    measured,
    reading,
    roomy,
    shop,
    speaker,
    tried,
)

REST = [reading("rear depth to glass down", "70 ± 1 mm"), reading("front clearance", "20 ± 1 mm")]


def test_a_room_that_nobody_measured_leaves_nothing_that_could_be_spared() -> None:
    number = ask(book(tried()), {"basket": "120 mm", "depth": "60 mm", "front": "10 mm"}).plain()["number"]
    assert number is not None
    assert number["room"] == "at least 60 mm (2.36 in) is known to be there"
    assert number["to_spare"] is None


def test_every_length_has_the_shops_own_unit_first() -> None:
    number = ask(book(shop("in"), roomy())).plain()["number"]
    assert number is not None
    assert (number["asks"], number["to_spare"]) == ("5.12 in (130 mm)", "0.39 in (10 mm)")
    flange = ask(book(shop("in"), speaker(flange="120 mm caliper"), roomy())).plain()["number"]
    assert flange is not None
    assert (flange["asks"], flange["room"]) == ("4.72 in (120 mm)", "it is at least 5.47 in (139 mm)")


def test_nobody_stands_behind_what_nobody_looked_at() -> None:
    assert ask(book()).witnesses == 0
    only_the_front = ask(book(measured("m", reading("cut-out", "140 ± 1 mm"), REST[0])))
    assert [one.narrowed for one in only_the_front.conditions] == [None]
    assert (only_the_front.verdict, only_the_front.sure, only_the_front.witnesses) == ("goes in if", "worked out", 0)
    assert only_the_front.notes == ()


def test_a_flange_is_the_number_only_where_it_is_what_stops_it() -> None:
    """It falls through the hole of an early door, and covers that of a late one."""
    late = measured("late", reading("cut-out", "135 ± 1 mm"), *REST, splits={"build": "late"})
    of = book(car(splits=BUILDS), roomy(splits={"build": "early"}), late, speaker(flange="138 mm caliper"))
    found = ask(of)
    assert (found.verdict, found.uncovered) == ("goes in if", None)
    assert found.conditions[0].words == "the build is late"


def test_a_place_is_called_what_the_book_calls_it() -> None:
    named = car(places={**DOORS, DOOR: {**DOORS[DOOR], "name": "front door"}})
    assert ask(book(named)).for_words.startswith("six in the front door of the Van, ")


def test_a_split_that_bears_on_another_place_is_not_said_to_be_open() -> None:
    splits: dict[str, Any] = {
        "build": {"values": {"early": {}, "late": {}}, "bears_on": {"places": ["shelf"]}},
        "body": {"values": {"van": {}, "bus": {}}, "bears_on": {"places": [DOOR]}},
    }
    words = ask(book(car(splits=splits))).for_words
    assert "body not known" in words
    assert "build not known" not in words


def test_each_note_beside_an_answer_is_quoted() -> None:
    found = ask(book(tried("up", glass="up"), tried("told", sure="told"), tried("new")))
    assert {one["note"]: one["words"].partition(":")[0] for one in found.plain()["notes"]} == dict.fromkeys(
        ("new", "up", "told"), "six"
    )


def test_what_is_argued_over_says_why_it_stands_there() -> None:
    found = ask(book(tried("yes"), tried("no", verdict="does not")))
    assert {one.why for one in found.argued} == {"cannot be true together with another"}


def test_what_goes_in_if_something_holds_says_what_its_screws_need() -> None:
    holes = {"count": 4, "kind": "plain"}
    thick = speaker(flange_thickness="6 mm caliper")
    front_open = measured("m", reading("cut-out", "140 ± 1 mm"), REST[0], bolt_holes=holes)
    found = ask(book(thick, front_open))
    assert found.verdict == "goes in if"
    assert "screws from 10 mm (0.39 in) (plain; 6 mm lies under the head)" in found.needs


def test_a_place_that_the_car_does_not_list_is_called_by_its_id() -> None:
    question = SpeakerQuestion(CAR, "gone-place", speaker="six", mounts=())
    assert speaker_answer(book(), question).for_words.startswith("six in the gone place of the Van, ")
