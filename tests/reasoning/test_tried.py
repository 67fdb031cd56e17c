"""Which sizes several notes share, and which exits have to be tried out."""

from bezelbook.kinds.record import Record
from bezelbook.reasoning.tried import TriedThings
from tests.reasoning.making import book, measured, place, reading, tried, unit


def things(*records: Record) -> TriedThings:
    at = place(book(*records)).all_notes
    return TriedThings(at.notes, at._told)


def test_every_note_is_about_one_thing_and_a_reading_about_none() -> None:
    at = place(
        book(unit(), tried("one"), tried("other", what="some box"), measured("wire", reading("depth", "200 mm")))
    )
    found = TriedThings(at.all_notes.notes, at.all_notes._told)
    assert [found.key_of(one) for one in at.all_notes.notes] == ["head_unit:box", "note:other", None]
    assert set(found.parts) == {"head_unit:box", "note:other"}


def test_a_size_with_a_give_matters_twice_only_where_the_thing_went_in_and_did_not() -> None:
    no = {"verdict": "does not", "reason": "depth", "sure": "dry-fitted"}
    assert things(unit(), tried("yes"), tried("again")).varying == frozenset()
    assert things(unit(), tried("yes"), tried("no", **no)).varying == {"head_unit:box"}


def test_an_exit_that_was_said_is_never_tried_out() -> None:
    assert list(things(unit(), tried()).exits(None, None)) == [{}]


def test_an_exit_nobody_said_is_tried_out_where_it_matters_twice_and_once_to_a_no() -> None:
    hidden = unit(plug_exit=None)
    no = tried("no", verdict="does not", reason="plug", sure="dry-fitted")
    assert list(things(hidden, tried("yes")).exits(None, None)) == [{}]
    ways = list(things(hidden, tried("yes"), no).exits(None, None))
    assert len(ways) == 9
    assert {way["head_unit:box"] for way in ways} >= {"centre", "upper-left"}
