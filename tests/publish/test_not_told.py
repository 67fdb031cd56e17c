from typing import Any

from bezelbook.kinds.note.record import Seen
from bezelbook.publish.not_told import told
from bezelbook.publish.notes import said
from tests.reasoning import making
from tests.reasoning.making import CAR, record

DOOR = "front-door-left"
NEAR = {
    "piece": "lining",
    "hidden": "Under the felt.",
    "pull": ["toward you"],
    "safety": "restraint near",
    "took": "9 min",
}
FAR = {"piece": "pocket", "hidden": "Behind the mat.", "pull": ["up"]}


def off(name: str = "off", *pieces: dict[str, Any], **content: Any) -> Any:
    plain = {"form": "seen", "vehicle": CAR, "place": DOOR, "pieces": list(pieces), "words": "Pull it like so."}
    return record("notes", name, plain | content)


def test_what_has_no_restraint_near_is_told_whole() -> None:
    note = off("off", FAR)
    assert told(making.book(note), note) is note
    other = making.tried()
    assert told(making.book(making.unit(), other), other) is other


def test_of_a_piece_with_a_restraint_near_only_that_and_its_time_are_told() -> None:
    note = off("off", NEAR, plug="long 20", hidden="One more.")
    one = told(making.book(note), note)
    assert isinstance(one, Seen)
    [piece] = one.pieces
    assert piece.model_fields_set == {"piece", "safety", "took"}
    assert (one.words, one.hidden, one.plug, one.id) == (None, None, "long 20", "off")


def test_beside_another_piece_the_words_stay_and_the_other_is_told_whole() -> None:
    note = off("off", NEAR, FAR)
    one = told(making.book(note), note)
    assert isinstance(one, Seen)
    assert [piece.hidden for piece in one.pieces] == [None, "Behind the mat."]
    assert one.words == "Pull it like so."


def test_another_note_or_the_vehicles_list_may_be_what_says_so() -> None:
    plain = off("plain", {name: value for name, value in NEAR.items() if name != "safety"})
    assert told(making.book(plain), plain) is plain
    said_so = off("other", NEAR)
    assert told(making.book(plain, said_so), plain) is not plain
    car = making.vehicle(trim={"lining": {"safety": "restraint near"}})
    assert told(making.book(car, plain), plain) is not plain


def test_a_page_says_that_it_left_something_out() -> None:
    note = off("off", NEAR)
    quoted = said(making.book(note), note)
    assert quoted.silent
    assert "felt" not in quoted.words + str(quoted.lines)
    assert not said(making.book(), making.tried()).silent
