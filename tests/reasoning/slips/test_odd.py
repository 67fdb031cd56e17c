"""The numbers of a note that are asked about, and which of them keep it out of the room of its place."""

from bezelbook.reasoning.slips.odd import odd_numbers
from tests.reasoning.making import measured, reading, record, tried


def test_a_size_of_the_room_makes_the_note_wait() -> None:
    (odd,) = odd_numbers(tried("n", sizes={"depth": "6.5 mm"}))
    assert (odd.path, odd.usual, odd.waits) == (("sizes", "depth"), "20 to 220 mm", True)


def test_a_screw_does_not() -> None:
    (odd,) = odd_numbers(tried("n", screws=[{"thread": "M5", "length": "2 mm"}]))
    assert (odd.path, odd.waits) == (("screws", 0, "length"), False)


def test_a_reading_is_found_where_it_stands() -> None:
    found = odd_numbers(measured("n", reading("depth", "205 mm"), reading("depth", "20.5 mm")))
    assert [odd.path for odd in found] == [("readings", 1, "reads")]


def test_what_was_read_back_stands() -> None:
    assert odd_numbers(tried("n", sizes={"depth": "6.5 mm"}, numbers="read back")) == ()


def test_a_thing_keyed_by_name_is_looked_into() -> None:
    part = {
        "name": "plate",
        "mount_kind": "plate",
        "holes": {"patterns": [{"state": "ready", "circle": "6 mm caliper"}]},
    }
    (odd,) = odd_numbers(record("mounts", "m", part))
    assert odd.path == ("holes", "patterns", 0, "circle")
