"""A question as plain data: read where it is right, and refused with what would mend it where it is not."""

from typing import Any

import pytest

from bezelbook.reasoning.asking import read_question
from bezelbook.reasoning.question import Question
from bezelbook.reasoning.speakers.question import SpeakerQuestion
from bezelbook.reasoning.spoken.found import Choice
from bezelbook.reasoning.vocabulary import vocabulary
from bezelbook.reasoning.wiring_asked.question import WiringQuestion
from bezelbook.values.complaint import Wrong
from tests.reasoning.making import CAR, HOLE, book, mount, record, split, tried, unit, vehicle

PLACES = {
    HOLE: {"kind": "plain opening", "side": "centre"},
    "door": {"kind": "door lower", "side": "left"},
    "bay": {"kind": "engine bay", "side": "centre"},
}
BOOK = book(
    vehicle(places=PLACES, splits={"build": split("early", "late")}),
    unit("slim", name="slim double"),
    mount("flush", name="flush kit"),
    tried(mounts=["bottom shelf kit"]),
)
SUB = record("speakers", "sub", {"name": "flat sub", "speaker_kind": "subwoofer", "nominal": "8 in"})
RIGHT = {"vehicle": CAR, "place": HOLE, "what": "slim"}


def read(**data: Any) -> Question:
    found = read_question(BOOK, {key: value for key, value in (RIGHT | data).items() if value != "left out"}).question
    assert found is not None
    return found


def refused(**data: Any) -> str:
    with pytest.raises(Wrong) as wrong:
        read(**data)
    return str(wrong.value)


def test_the_least_that_can_be_asked_is_read_as_usual() -> None:
    assert read() == Question(CAR, HOLE, unit="slim")


def test_all_that_can_be_asked_is_read() -> None:
    state = {"mounts": ["flush"], "cut": "one rib", "loom": "behind", "plugs": "off"}
    sizes = {"depth": "165 mm", "plug_and_bend": "32 ± 5 mm", "plug_exit": "right", "like": "slim"}
    found = read(splits={"build": "late"}, year=4, state=state, what=sizes)
    assert (found.splits, found.year, found.mounts, found.cut) == ({"build": "late"}, 4, ("flush",), "one rib")
    assert (found.loom, found.plugs, found.unit, found.exit) == ("behind", "off", "slim", "right")
    assert {need: size.base for need, size in found.sizes.items()} == {"depth": 165_000_000, "plug": 32_000_000}


def test_words_are_read_as_words() -> None:
    found = read_question(BOOK, {"words": "slim double small van"}, vocabulary(BOOK))
    assert found.question is not None
    assert found.question.unit == "slim"


def test_the_vocabulary_that_is_handed_in_is_the_one_that_is_used() -> None:
    found = read_question(BOOK, {"words": "slim double small van"}, ()).read
    assert isinstance(found, Choice)
    assert found.ask == "Which vehicle?"


def test_under_a_seat_goes_a_box_or_a_speaker_as_the_thing_is_one() -> None:
    of = book(vehicle(places={"seat": {"kind": "under seat", "side": "left"}}), unit("slim"), SUB)
    put = {"vehicle": CAR, "place": "seat"}
    box = read_question(of, put | {"what": "slim"}).read
    assert box == Question(CAR, "seat", unit="slim")
    sub = read_question(of, put | {"what": "sub"}).read
    assert isinstance(sub, SpeakerQuestion)
    assert (sub.vehicle, sub.place, sub.speaker) == (CAR, "seat", "sub")


def test_words_stand_alone() -> None:
    assert refused(words="slim double").startswith('there is no "vehicle" in a question in words.')


@pytest.mark.parametrize("key", ["plug", "plug_and_bend"])
def test_sizes_are_called_as_in_a_note_or_shorter(key: str) -> None:
    assert set(read(what={key: "32 mm", "exit": "left"}).sizes) == {"plug"}


@pytest.mark.parametrize("what", ["slim", "slim double", "Slim-Double"])
def test_a_thing_is_named_by_any_of_its_names(what: str) -> None:
    assert read(what=what).unit == "slim"


def test_what_is_not_looked_at_is_not_known() -> None:
    assert read(splits={"build": "not looked"}).splits == {}
    assert read(splits={"build": None}).splits == {}
    assert read(splits=None, year=None, state=None) == read()


@pytest.mark.parametrize(
    ("mounts", "found"),
    [
        ("none", ()),
        ("flush", ("flush",)),
        (["flush kit"], ("flush kit",)),
        (["Bottom-shelf kit"], ("Bottom-shelf kit",)),
        (None, None),
    ],
)
def test_mounts_are_of_the_book_or_of_a_note_about_the_place(mounts: Any, found: tuple[str, ...] | None) -> None:
    assert read(state={"mounts": mounts}).mounts == found


@pytest.mark.parametrize(
    ("data", "complaint"),
    [
        ({"colour": "red"}, 'there is no "colour" in a question. One of: vehicle, place,'),
        ({"vehcle": "x"}, 'there is no "vehcle" in a question. Did you mean "vehicle"?'),
        ({"vehicle": "left out"}, '"vehicle" is missing. Add it as text, for example "vehicle": "…".'),
        ({"vehicle": " "}, '"vehicle" is missing.'),
        ({"vehicle": "small-van-2"}, 'the book has no vehicle "small-van-2". Did you mean "small-van-1"?'),
        ({"place": "roof"}, 'the book has no place of small-van-1 "roof". One of: dash-centre, door, bay.'),
        ({"place": "door"}, "slim double is a head unit, and door does not take a box."),
        (
            {"place": "bay"},
            (
                "bay is no place for a part (engine bay); nothing goes in there. "
                "Ask about a dash opening or a place for a speaker."
            ),
        ),
        (
            {"what": "left out"},
            '"what" is missing or empty. Write a head unit\'s file name, or sizes such as {"depth": "165 mm"}.',
        ),
        ({"what": {}}, '"what" is missing or empty.'),
        ({"what": 165}, '"what" is missing or empty.'),
        ({"what": "slin"}, 'the book has no head unit "slin". Did you mean "slim"?'),
        ({"what": {"dept": "1 mm"}}, 'there is no "dept" in what. Did you mean "depth"?'),
        ({"what": {"like": "slim"}}, 'no size is given in what. Give at least one, such as {"depth": "165 mm"}.'),
        ({"what": {"like": "fat", "depth": "1 mm"}}, 'the book has no head unit "fat". One of: slim.'),
        ({"what": {"depth": 165}}, 'depth is a bare number, 165. Write "165 mm" or "165 in".'),
        ({"what": {"depth": 16.5}}, "depth is a bare number, 16.5."),
        ({"what": {"depth": True}}, "depth is not a size."),
        ({"what": {"depth": ["165 mm"]}}, 'depth is not a size. Write it as text, such as "depth": "165 mm".'),
        ({"what": {"depth": "165"}}, "depth: 165 is a bare number. Write 165 mm or 165 in."),
        ({"what": {"depth": "165 mm printed"}}, 'depth is only printed, which carries no answer. Ask "165 mm"'),
        (
            {"what": {"depth": "1 mm", "exit": "middle"}},
            (
                '"middle" is not one of the nine places behind an opening. '
                "One of: upper-left, upper, upper-right, left, centre, right, lower-left, lower, lower-right."
            ),
        ),
        ({"splits": {"trim": "plush"}}, 'the book has no split of small-van-1 "trim". One of: build.'),
        ({"splits": {"build": "lat"}}, 'the book has no value of build "lat". Did you mean "late"?'),
        ({"splits": ["late"]}, '"splits" is not a set of keys and values.'),
        ({"year": 9}, "year 9 is not a model year of small-van-1. Count them from 1 to 5."),
        ({"year": True}, "year True is not a model year"),
        ({"year": "2"}, "year '2' is not a model year"),
        ({"state": {"glass": "up"}}, 'there is no "glass" in state.'),
        ({"state": {"loom": "tidy"}}, "loom is 'tidy'. Write one of: aside, behind."),
        ({"state": {"plugs": True}}, "plugs is True. Write one of: on, off."),
        ({"state": {"cut": ""}}, 'cut is not in words. Write what may be cut, or "nothing".'),
        ({"state": {"mounts": ["flus"]}}, 'the book has no mount "flus". Did you mean "flush"?'),
        ({"state": {"mounts": [""]}}, "mounts is not a list of names."),
        ({"state": {"mounts": 3}}, 'mounts is not a list of names. Write ["flush-kit"], or the word "none".'),
    ],
)
def test_what_cannot_be_read_says_what_is_wrong_and_what_would_mend_it(data: dict[str, Any], complaint: str) -> None:
    assert refused(**data).startswith(complaint)


def test_a_very_long_name_is_not_said_back_whole() -> None:
    assert len(refused(vehicle="x" * 5_000)) < 300


def test_of_very_many_names_only_some_are_offered() -> None:
    many = book(*(unit(f"u-{number}") for number in range(50)))
    with pytest.raises(Wrong) as wrong:
        read_question(many, {"vehicle": CAR, "place": HOLE, "what": "zzz"})
    assert wrong.value.mend.endswith(" …")
    assert wrong.value.mend.count(",") == 19


def test_where_there_is_nothing_to_name_that_is_said() -> None:
    with pytest.raises(Wrong, match="There is none to name yet"):
        read_question(book(), {"vehicle": CAR, "place": HOLE, "what": "slim"})


def test_a_job_is_a_question_about_wiring() -> None:
    found = read_question(BOOK, {"vehicle": CAR, "job": "replace the radio"}).read
    assert isinstance(found, WiringQuestion)
    assert found.vehicle == CAR
