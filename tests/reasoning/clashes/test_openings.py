"""Which notes of an opening cannot all be true, about which size, and why (worked by hand)."""

import pytest

from bezelbook.reasoning.clashes.openings import opening_clashes
from tests.reasoning.clashes.made import CAR, DASH, book, measured, tried, unit
from tests.reasoning.making import record

SAID = {"form": "measured", "vehicle": CAR, "place": DASH}


def told(*records: object) -> list[tuple[str, str, list[str]]]:
    clashes = opening_clashes(book(*records), CAR, DASH)  # type: ignore[arg-type]
    return [(one.first.explained.why, one.first.size, [note.id for note in one.first.notes]) for one in clashes]


def test_the_size_is_the_one_that_clashes_though_the_notes_tell_of_more() -> None:
    one = measured("one", ("width", "182 ± 1 mm"), ("height", "111 ± 1 mm"))
    other = measured("two", ("width", "173 ± 1 mm"), ("height", "111 ± 1 mm"))
    assert told(one, other) == [("room", "width", ["one", "two"])]


def test_two_sizes_at_once_are_the_room() -> None:
    one = measured("one", ("width", "182 ± 1 mm"), ("height", "111 ± 1 mm"))
    other = measured("two", ("width", "173 ± 1 mm"), ("height", "98 ± 1 mm"))
    assert told(one, other) == [("room", "room", ["one", "two"])]


def test_a_ladder_is_told_as_a_ladder() -> None:
    units = [unit("deep", "170 ± 1 mm caliper"), unit("deeper", "185 ± 1 mm caliper")]
    notes = [tried("yes", "deeper", "goes in"), tried("no", "deep", "does not", reason="depth")]
    assert told(*units, *notes) == [("ladder", "depth", ["no", "yes"])]


def test_what_agrees_is_not_told() -> None:
    assert (
        told(unit("deep", "170 mm caliper"), tried("yes", "deep", "goes in"), measured("m", ("depth", "210 mm"))) == []
    )


ANYWHERE = [{"of": "depth", "reads": f"{reads} ± 1 mm", "datum": "sub-dash face"} for reads in (170, 171, 172, 173)]


@pytest.mark.parametrize(
    ("last", "expected"),
    [
        ("196 ± 1 mm", [("room", "depth", ["many"])]),
        ("173 ± 1 mm", []),
    ],
)
def test_many_depths_of_which_nobody_said_where_are_held_to_the_rest_one_by_one(last: str, expected: object) -> None:
    everywhere = {"of": "depth", "reads": "172 ± 3 mm", "zones": "all", "datum": "sub-dash face"}
    readings = [everywhere, *ANYWHERE, {"of": "depth", "reads": last, "datum": "sub-dash face"}]
    assert told(record("notes", "many", SAID | {"readings": readings})) == expected


def test_depths_of_which_nobody_said_where_clash_with_what_another_note_says_of_everywhere() -> None:
    many = record("notes", "many", SAID | {"readings": ANYWHERE})
    assert told(many, measured("m", ("depth", "180 ± 3 mm"))) == [("room", "depth", ["m", "many"])]
    assert told(many, measured("m", ("depth", "172 ± 3 mm"))) == []


def test_what_is_read_from_nobody_knows_where_is_not_among_them() -> None:
    from_the_bezel = [one | {"datum": "finished bezel face"} for one in ANYWHERE]
    many = record("notes", "many", SAID | {"readings": from_the_bezel})
    assert told(many, measured("m", ("depth", "180 ± 3 mm"))) == []
