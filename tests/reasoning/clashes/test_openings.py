"""Which notes of an opening cannot all be true, about which size, and why (worked by hand)."""

from bezelbook.reasoning.clashes.openings import opening_clashes
from tests.reasoning.clashes.made import CAR, DASH, book, measured, tried, unit


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
