"""Free words at the counter: what they name becomes a question, what they leave open is asked, nothing is guessed."""

from typing import Any

import pytest

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.question import Question
from bezelbook.reasoning.speakers.question import SpeakerQuestion
from bezelbook.reasoning.vocabulary import vocabulary
from bezelbook.reasoning.wiring_asked.question import WiringQuestion
from bezelbook.reasoning.words import Choice, Reading, read_words
from tests.reasoning.making import book, mount, record, unit

SPLITS = {
    "build": {"values": {"early": {}, "late": {"also": ["facelift"]}}},
    "audio": {"values": {"base": {}, "upgraded": {}}},
}
RADIO = {"kind": "plain opening", "side": "centre", "name": "radio hole", "also": ["dash"]}
BAY = {"kind": "module bay", "side": "left", "name": "left bay"}
DOOR = {"kind": "door lower", "side": "left", "name": "front door"}


def car(name: str, called: str, generation: int = 2, **places: Any) -> Any:
    content = {"name": called, "vehicle_class": called, "generation": generation, "model_years": 5}
    return record("vehicles", name, content | {"splits": SPLITS, "places": places})


NAMELESS = {"dash-centre": "plain opening", "dash-low": "pocket", "front-door": "door lower"}
HATCH = car("hatch-2", "compact hatch", radio=RADIO, door=DOOR)
VAN = car("van-1", "cargo van", 1, radio=RADIO, bay=BAY)
BOOK = book(
    HATCH, VAN, unit("slim", name="slim double"), unit("disc", name="disc double"), mount("flush", name="flush kit")
)


def read(text: str, of: KnowledgeBase = BOOK) -> Reading:
    return read_words(of, text)


def question(text: str, of: KnowledgeBase = BOOK) -> Question:
    found = read(text, of).question
    assert found is not None
    return found


def asked(text: str, of: KnowledgeBase = BOOK) -> Choice:
    found = read(text, of).read
    assert isinstance(found, Choice)
    return found


def test_words_that_name_a_vehicle_and_a_thing_are_a_question() -> None:
    found = question("slim double in the compact hatch, late")
    assert (found.vehicle, found.place, found.unit, found.splits) == ("hatch-2", "radio", "slim", {"build": "late"})
    assert (found.mounts, found.sizes, found.year) == (None, {}, None)


def test_what_a_box_is_sold_as_says_nothing_beside_a_unit_that_is_named() -> None:
    """178 by 100 is what a 2 din measures where nobody says which one it is."""
    assert question("slim double, 2 din, compact hatch").sizes == {}
    assert question("2 din 165 deep compact hatch").sizes.keys() > {"depth"}


def test_a_depth_is_enough_of_a_thing() -> None:
    found = question("does 165 mm go in a compact hatch")
    assert (found.unit, {need: size.base for need, size in found.sizes.items()}) == (None, {"depth": 165_000_000})


def test_the_reading_of_a_bare_number_is_told() -> None:
    assert read("165 in compact hatch").took == ("165 read as mm",)
    assert read("178 wide compact hatch").took == ("178 read as mm",)
    found = read("165 slim double compact hatch")
    assert found.question is not None
    assert (dict(found.question.sizes), found.took) == ({}, ("165 was not read as a size",))


def test_a_thing_may_have_another_size() -> None:
    found = question("slim double but 150 mm deep, compact hatch")
    assert (found.unit, found.sizes["depth"].base) == ("slim", 150_000_000)


def test_the_year_and_the_mounts_are_taken_from_the_words() -> None:
    found = question("slim double flush kit compact hatch year 4")
    assert (found.year, found.mounts) == (4, ("flush",))


@pytest.mark.parametrize("year", [1, 5])
def test_the_first_and_the_last_model_year_are_years(year: int) -> None:
    found = read(f"slim double compact hatch year {year}")
    assert found.question is not None
    assert (found.question.year, found.took) == (year, ())


def test_a_year_that_never_was_is_left_out_and_told() -> None:
    found = read("slim double compact hatch year 9")
    assert found.question is not None
    assert found.question.year is None
    assert found.took == ("year 9 was left out: the compact hatch ran 5 model years",)


def test_a_split_of_which_two_values_are_said_is_not_known() -> None:
    assert question("slim double compact hatch early or late base").splits == {"audio": "base"}


@pytest.mark.parametrize("words", ["slim double in the hatch", "slim double, hatch 2", "slim double hatch gen 2"])
def test_a_vehicle_is_found_by_a_word_that_only_it_has(words: str) -> None:
    assert question(words).vehicle == "hatch-2"


def test_another_generation_is_another_vehicle() -> None:
    assert asked("slim double hatch gen 1").ask == "Which vehicle?"
    assert asked("slim double cargo van gen 3").ask == "Which vehicle?"


def test_of_two_generations_the_one_that_is_said_is_meant() -> None:
    of = book(HATCH, car("hatch-1", "compact hatch", 1, radio=RADIO), unit("slim", name="slim double"))
    assert question("slim double compact hatch 1", of).vehicle == "hatch-1"
    assert question("slim double hatch 2", of).vehicle == "hatch-2"
    assert question("slim double hatch mk2", of).vehicle == "hatch-2"
    assert asked("slim double hatch", of).ask == "Which vehicle?"


def test_a_generation_is_no_size_and_a_size_is_no_generation() -> None:
    found = question("hatch 2 165 mm")
    assert (found.vehicle, found.sizes["depth"].base) == ("hatch-2", 165_000_000)
    assert question("hatch 165 mm").vehicle == "hatch-2"
    assert question("hatch 6 1/2 in").sizes["depth"].base == 165_100_000


@pytest.mark.parametrize(
    ("words", "depth"),
    [
        ("165 mm deep in the compact 2 in the dash", 165_000_000),
        ("compact 2 165 mm", 165_000_000),
        ("compact 7 in", 177_800_000),
        ("compact 2 1/2 in deep", 63_500_000),
        ("compact 10", 100_000_000),
    ],
)
def test_a_number_behind_a_vehicle_is_its_generation_unless_it_goes_on_as_a_size(words: str, depth: int) -> None:
    found = question(words)
    assert (found.vehicle, {need: size.base for need, size in found.sizes.items()}) == ("hatch-2", {"depth": depth})


def test_a_generation_that_was_taken_is_not_told_as_a_size_left_out() -> None:
    assert read("165 mm deep in the compact 2 in the dash").took == ()


def test_what_was_left_out_of_words_about_a_speaker_is_told() -> None:
    found = read("165 mm deep in the front door of the compact hatch, year 9")
    assert isinstance(found.read, SpeakerQuestion)
    assert found.took == ("year 9 was left out: the compact hatch ran 5 model years",)
    known = read("165 mm deep in the front door of the compact hatch, late, year 4").read
    assert isinstance(known, SpeakerQuestion)
    assert (known.splits, known.year) == ({"build": "late"}, 4)
    wiring = read("which harness for slim double, compact hatch, year 9")
    assert isinstance(wiring.read, WiringQuestion)
    assert wiring.took == found.took
    late = read("which harness for slim double, compact hatch, late, year 4").read
    assert isinstance(late, WiringQuestion)
    assert (late.splits, late.year) == ({"build": "late"}, 4)


def test_a_number_that_says_nothing_beside_a_thing_does_not_hide_that_wiring_is_asked_about() -> None:
    assert isinstance(read("which harness for slim double 165, compact hatch").read, WiringQuestion)
    assert isinstance(read("which harness for 165 mm, compact hatch").read, Question)


def test_a_small_number_behind_a_vehicle_is_a_generation_even_where_there_is_none() -> None:
    assert asked("compact 3 165 mm").ask == "Which vehicle?"


def test_a_vehicle_named_with_its_number_is_meant_whatever_else_is_said_of_generations() -> None:
    assert question("slim double hatch 2 gen 1").vehicle == "hatch-2"


def test_where_no_vehicle_is_named_every_vehicle_is_offered() -> None:
    assert asked("slim double").options == (
        ("compact hatch", "hatch 2"),
        ("small van", "small van 1"),
        ("cargo van", "van 1"),
    )


def test_where_several_places_are_possible_they_are_offered_by_name() -> None:
    assert asked("slim double cargo van") == Choice("Which place?", (("radio hole", "radio"), ("left bay", "bay")))
    assert read("slim double cargo van").question is None


def test_a_place_is_not_found_by_what_another_vehicle_calls_its_own() -> None:
    other = car("truck-1", "pickup truck", 1, bay=BAY | {"name": "hidden shelf"})
    of = book(VAN, other, unit("slim", name="slim double"))
    assert asked("slim double cargo van hidden", of).ask == "Which place?"


def test_places_without_a_name_are_called_as_their_files_are() -> None:
    nameless = {id_: {"kind": kind, "side": "left"} for id_, kind in NAMELESS.items()}
    of = book(car("truck-1", "pickup truck", 1, **nameless), unit("slim", name="slim double"))
    assert asked("slim double pickup truck front door", of) == Choice(
        "front door is no opening that takes a box. Which place?",
        (("dash centre", "dash centre"), ("dash low", "dash low")),
    )


@pytest.mark.parametrize(
    ("words", "place"),
    [("radio hole", "radio"), ("dash", "radio"), ("left bay", "bay"), ("the bay", "bay"), ("hole", "radio")],
)
def test_a_place_is_found_by_its_names_or_by_a_word_that_only_it_has(words: str, place: str) -> None:
    assert question(f"slim double cargo van {words}").place == place


def test_a_place_that_takes_no_box_says_so() -> None:
    assert (
        asked("slim double compact hatch front door").ask == "front door is no opening that takes a box. Which place?"
    )


def test_where_no_thing_is_named_things_are_offered() -> None:
    found = asked("compact hatch")
    assert found.ask == "Which one, or how deep is it?"
    assert found.options == (("disc double", "disc"), ("slim double", "slim"))


def test_where_two_things_are_named_those_two_are_offered() -> None:
    assert asked("slim double or disc double, compact hatch").ask == "Which one?"


def test_a_size_that_is_no_depth_asks_for_the_depth() -> None:
    found = asked("178 mm wide compact hatch")
    assert (found.ask, found.options) == ("How deep is it?", ())
    assert found.opening is not None
    assert {need: size.typed for need, size in found.opening.sizes.items()} == {"width": "178 mm"}


def test_a_thing_whose_name_is_not_quite_what_was_typed_is_offered_beside_the_depth() -> None:
    of = book(HATCH, unit("two-high", name="disc double with a slot"), unit("other", name="shallow double"))
    found = asked("compact hatch double, with disc", of)
    assert (found.ask, found.options) == ("How deep is it?", (("disc double with a slot", "two high"),))
    assert found.opening is not None
    assert asked("compact hatch double", of).options == ()
    # Where no size was said, everything is offered.
    assert asked("compact hatch disc, slot", of).ask == "Which one, or how deep is it?"


@pytest.mark.parametrize("word", ["deep", "wide", "high", "depth"])
def test_a_small_number_before_what_it_measures_is_no_generation(word: str) -> None:
    found = read(f"compact hatch 9 {word}")
    assert any("9" in one for one in found.took), found


def test_two_sizes_that_may_be_the_depth_are_offered() -> None:
    found = asked("165 mm or 170 mm compact hatch")
    assert found == Choice("Which of these is its depth?", (("165 mm", "165 mm deep"), ("170 mm", "170 mm deep")))


def test_what_is_asked_still_tells_what_was_taken() -> None:
    assert read("cargo van 165").took == ("165 read as mm",)


def test_a_name_of_two_mounts_has_to_be_made_plain() -> None:
    kits = [mount("a", name="kit A", also=["the kit"]), mount("b", name="kit B", also=["the kit"])]
    of = book(HATCH, unit("slim", name="slim double"), *kits)
    found = read("slim double compact hatch with the kit 165", of)
    assert found.read == Choice("Which mount?", (("kit A", "a"), ("kit B", "b")))
    assert found.took == ("165 was not read as a size",)


def test_several_mounts_are_in_the_order_of_the_words() -> None:
    of = book(HATCH, unit("slim", name="slim double"), mount("ring"), mount("flush", name="flush kit"))
    assert question("slim double compact hatch flush kit ring flush kit", of).mounts == ("flush", "ring")


def test_the_vocabulary_may_be_handed_in() -> None:
    text = "slim double compact hatch"
    assert read_words(BOOK, text, vocabulary(BOOK)) == read_words(BOOK, text)
    assert isinstance(read_words(BOOK, text, ()).read, Choice)


def test_an_empty_book_has_no_vehicle_to_offer() -> None:
    found = read_words(KnowledgeBase(), "anything").read
    assert isinstance(found, Choice)
    assert found.options == ()
    assert found.ask == (
        "The book holds no vehicle yet: write the first one as a file in its folder vehicles, as the page "
        "How to write it down shows. Which vehicle will be the first?"
    )
