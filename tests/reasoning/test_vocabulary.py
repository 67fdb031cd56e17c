"""Typed words as the book has them, and the phrases that point at its records."""

from typing import Any

import pytest

from bezelbook.reasoning.vocabulary import FILLERS, OPENINGS, Phrase, folded_words, vocabulary
from tests.reasoning.making import CAR, HOLE, book, mount, record, unit, vehicle


@pytest.mark.parametrize(
    ("typed", "words"),
    [
        ("Short-Double", "short double"),
        ("  Hatch   2 ", "hatch 2"),
        ("hatch gen 2", "hatch gen 2"),
        ("hatch generation 2", "hatch gen 2"),
        ("hatch gen2", "hatch gen 2"),
        ("hatch mk2", "hatch gen 2"),
        ("hatch mark II", "hatch gen 2"),
        ("hatch Mk III", "hatch gen 3"),
        ("2nd generation hatch", "gen 2 hatch"),
        ("second gen hatch", "gen 2 hatch"),
        ("the second hatch", "the second hatch"),
        ("178×100*165", "178 x 100 x 165"),
        ('6 1/2"', '6 1/2"'),
        ("6 1⁄2″", '6 1/2"'),
        ("165 +/- 1 mm", "165 ± 1 mm"),
        ("165 ± 1mm", "165 ± 1mm"),
        ('a "short double" please', "a short double please"),
        ("fits?", "fits"),
        ("165 mm.", "165 mm"),
        ("hatch, late.", "hatch late"),
        ("178w 100h 165d", "178 wide 100 high 165 deep"),
        ("2din", "2 din"),
    ],
)
def test_the_ways_to_write_one_thing_become_one(typed: str, words: str) -> None:
    assert " ".join(folded_words(typed)) == words


def test_nothing_typed_is_no_words() -> None:
    assert folded_words(" … ") == ()


SPLITS = {"build": {"values": {"early": {}, "late": {"also": ["facelift"]}}}}
PLACES = {HOLE: {"kind": "plain opening", "side": "centre", "name": "radio hole", "also": ["radio"]}}


def phrases() -> dict[str, Phrase]:
    car = vehicle(also=["van one"], splits=SPLITS, places=PLACES)
    found = vocabulary(
        book(car, unit("short-double", name="short two-high", also=["slim"]), mount("kit", name="flush one"))
    )
    return {" ".join(phrase.words): phrase for phrase in found}


def test_every_name_of_a_record_points_at_it() -> None:
    found = phrases()
    assert {words: phrase.id for words, phrase in found.items() if phrase.points == "unit"} == dict.fromkeys(
        ("short double", "short two high", "slim"), "short-double"
    )
    assert {words for words, phrase in found.items() if phrase.points == "mount"} == {"kit", "flush one"}
    assert {words for words, phrase in found.items() if phrase.points == "vehicle"} == {
        *("small van 1", "small van", "van one", "cargo van 1", "cargo van gen 1"),
    }


def test_places_and_split_values_belong_to_their_vehicle() -> None:
    found = phrases()
    assert {words: (one.id, one.vehicle) for words, one in found.items() if one.points == "place"} == dict.fromkeys(
        ("dash centre", "radio hole", "radio"), (HOLE, CAR)
    )
    assert found["facelift"] == Phrase(("facelift",), "split", "late", CAR, "build")


def test_what_has_no_name_is_known_by_its_file_name_alone() -> None:
    nameless = {HOLE: {"kind": "plain opening", "side": "centre"}}
    assert vocabulary(book(vehicle(places=nameless, splits={"build": {"values": {"early": {}}}}))) == (
        Phrase(("cargo", "van", "gen", "1"), "vehicle", CAR),
        Phrase(("cargo", "van", "1"), "vehicle", CAR),
        Phrase(("small", "van", "1"), "vehicle", CAR),
        Phrase(("dash", "centre"), "place", HOLE, CAR),
        Phrase(("small", "van"), "vehicle", CAR),
        Phrase(("early",), "split", "early", CAR, "build"),
    )


def speaker(name: str, called: str, **more: Any) -> Any:
    return record("speakers", name, {"name": called, "speaker_kind": "coaxial", "nominal": "6 1/2 in"} | more)


def test_a_speaker_is_named_with_its_number_words_as_digits_too() -> None:
    shelf = speaker("shallow", "Shallow six and a half", also=["six by nine"]), speaker("deep", "Deep one")
    found = {" ".join(one.words): one.id for one in vocabulary(book(*shelf)) if one.points == "speaker"}
    assert found == {
        "shallow six and a half": "shallow",
        "shallow 6.5": "shallow",
        "six by nine": "shallow",
        "shallow": "shallow",
        "deep one": "deep",
        "deep": "deep",
    }


def test_a_unit_is_named_with_its_inches_written_in_any_way() -> None:
    shelf = unit("floater", name="Floating nine inch", also=["9 inch screen"]), unit("other", name="9in screen")
    found = {" ".join(one.words): one.id for one in vocabulary(book(*shelf)) if one.points == "unit"}
    floating = {f"floating {inches}" for inches in ("nine inch", "9 inch", "9 in", "9inch", "9in", '9"')}
    assert {words for words, id_ in found.items() if id_ == "floater"} >= floating
    # What a record says itself comes first.
    assert (found["9 inch screen"], found["9in screen"]) == ("floater", "other")


def test_a_nickname_comes_before_number_words_as_digits() -> None:
    shelf = speaker("a", "Flat one", also=["slim 6.5"]), speaker("b", "Slim six and a half")
    assert [one.id for one in vocabulary(book(*shelf)) if one.words == ("slim", "6.5")] == ["a"]


def test_longer_phrases_come_first_and_none_is_empty() -> None:
    lengths = [len(phrase.words) for phrase in vocabulary(book(vehicle(places=PLACES, splits=SPLITS), unit(name="…")))]
    assert lengths == sorted(lengths, reverse=True)
    assert min(lengths) >= 1


def test_words_that_tell_nothing_are_small_words() -> None:
    assert {"the", "in", "does", "fit"} <= FILLERS
    assert not {"hatch", "radio", "late", "double"} & FILLERS


def test_only_places_that_take_a_box_are_openings() -> None:
    assert {"plain opening", "module bay", "glovebox"} <= OPENINGS
    assert not {"door lower", "parcel shelf", "pillar"} & OPENINGS


def test_a_file_name_comes_before_a_name_and_a_name_before_a_nickname() -> None:
    shelf = (
        unit("short-double", name="Short one", also=["slim double", "cheap one"]),
        unit("slim-double", name="Cheap one", also=["thin one"]),
        unit("thin-double", name="Slim double", also=["thin one"]),
    )
    found = [(" ".join(phrase.words), phrase.id) for phrase in vocabulary(book(vehicle(places=PLACES), *shelf))]
    assert [id_ for words, id_ in found if words == "slim double"] == ["slim-double"]
    assert [id_ for words, id_ in found if words == "cheap one"] == ["slim-double"]
    assert [id_ for words, id_ in found if words == "thin one"] == ["slim-double", "thin-double"]
