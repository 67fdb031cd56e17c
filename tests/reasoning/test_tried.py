"""Which sizes several notes share, and which exits have to be tried out."""

from bezelbook.kinds.record import Record
from bezelbook.reasoning.needs import needs_of_unit
from bezelbook.reasoning.tried import TriedThings
from bezelbook.values.words import NINTHS
from tests.reasoning.making import book, measured, mount, place, reading, setting, tried, unit


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
    assert things(unit(), tried("no", **no)).varying == frozenset()
    assert things(unit(), tried("yes"), tried("no", **no)).varying == {"head_unit:box"}


def test_an_exit_that_was_said_is_never_tried_out() -> None:
    assert list(things(unit(), tried()).exits(None, None)) == [{}]


def test_an_exit_nobody_said_is_tried_out_where_it_matters_twice_and_once_to_a_no() -> None:
    hidden = unit(plug_exit=None)
    no = tried("no", verdict="does not", reason="plug", sure="dry-fitted")
    assert list(things(hidden, tried("yes")).exits(None, None)) == [{}]
    assert list(things(hidden, no).exits(None, None)) == [{}]
    for less in ({"plugs": "off"}, {"mounts": None}):
        unplugged = tried("no", verdict="does not", reason="depth", sure="dry-fitted", **less)
        assert list(things(hidden, tried("yes"), unplugged).exits(None, None)) == [{}]
    ways = list(things(hidden, tried("yes"), no).exits(None, None))
    assert len(ways) == 9
    assert {way["head_unit:box"] for way in ways} >= {"centre", "upper-left"}


def test_of_the_thing_asked_about_every_exit_is_tried_out_if_it_was_fitted_and_its_plugs_are_on() -> None:
    hidden, other, said = unit(plug_exit=None), unit("other", plug_exit=None), unit("said")
    of = book(hidden, other, said, tried("yes"), tried("known", what="said"))
    found = things(hidden, other, said, tried("yes"), tried("known", what="said"))
    box, new, known = (needs_of_unit(of, one) for one in (hidden, other, said))
    assert list(found.exits(box, setting(of))) == [{"head_unit:box": ninth} for ninth in NINTHS]
    unasked = [(box, setting(of, plugs_on=False)), (new, setting(of)), (known, setting(of)), (box, None)]
    assert [list(found.exits(needs, way)) for needs, way in unasked] == [[{}]] * len(unasked)


def test_a_plug_leaves_behind_every_hole_that_its_thing_was_fitted_through() -> None:
    hidden, half = unit(plug_exit=None), mount(presents={"ninths": ["left", "right"]})
    yes, no = tried("yes", mounts=["kit"]), tried("no", verdict="does not", reason="plug", sure="dry-fitted")
    of = book(hidden, half, yes)
    sides = [{"head_unit:box": "left"}, {"head_unit:box": "right"}]
    assert list(things(hidden, half, yes).exits(needs_of_unit(of, hidden), setting(of))) == sides
    assert list(things(hidden, half, yes, no).exits(None, None)) == sides


def test_where_too_many_things_went_in_no_exit_is_tried_out_for_them() -> None:
    """Nine exits each: 81 ways for two things, 729 for three, and nobody waits for more than 600."""
    hidden = [unit(f"box-{number}", plug_exit=None) for number in range(3)]
    yeses = [tried(f"yes-{number}", what=f"box-{number}") for number in range(3)]
    noes = [tried(f"no-{number}", what=f"box-{number}", verdict="does not") for number in range(3)]
    assert things(*hidden, *yeses[:2]).tries_exits
    assert not things(*hidden, *yeses).tries_exits
    assert things(*hidden, *noes).tries_exits
    assert things(*(unit(f"box-{number}") for number in range(3)), *yeses).tries_exits
