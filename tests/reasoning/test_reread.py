"""A number is read as the team says it was meant, exactly, and what was typed stays beside it."""

import pytest

from bezelbook.reasoning.reread import number_reread, reading_reread
from bezelbook.values.quantity import Quantity
from tests.reasoning import making

MM = 1_000_000


def test_an_odd_size_in_inches_is_so_many_millimetres_exactly() -> None:
    """6.5 in is 165.1 mm (1 in = 25.4 mm exactly, international inch)."""
    note = number_reread(making.tried(sizes={"depth": "6.5 mm", "width": "178 mm"}), "in")
    assert note.sizes is not None
    assert note.sizes.depth is not None
    assert note.sizes.depth.base == 165_100_000
    assert note.sizes.depth.typed == "6.5 mm, read as 165.1 mm (6 1/2 in)"
    assert note.sizes.width is not None
    assert note.sizes.width.typed == "178 mm"
    assert note.numbers == "read back"


def test_a_plus_minus_beside_an_odd_size_was_meant_in_the_same_unit() -> None:
    """6.5 in is 165.1 mm and 0.1 in is 2.54 mm (1 in = 25.4 mm exactly, international inch)."""
    note = number_reread(making.tried(sizes={"depth": "6.5 ± 0.1 mm caliper"}), "in")
    assert note.sizes is not None
    assert note.sizes.depth == Quantity(
        "length", 165_100_000, 2_540_000, "caliper", "6.5 ± 0.1 mm caliper, read as 165.1 mm (6 1/2 in)"
    )
    assert isinstance(note.sizes.depth.give, int)


def test_an_odd_reading_behind_others_leaves_them_as_they_are() -> None:
    note = making.measured("m", *(making.reading("depth", reads) for reads in ("205 mm", "8 mm", "206 mm")))
    assert [one.reads.base for one in number_reread(note, "in").readings] == [205 * MM, 203_200_000, 206 * MM]


def test_an_odd_reading_among_others_is_read_in_inches() -> None:
    note = making.measured("m", making.reading("depth", "8 mm"), making.reading("depth", "205 mm"))
    read = number_reread(note, "in").readings
    assert [one.reads.base for one in read] == [203_200_000, 205 * MM]


def test_an_odd_number_that_stands_is_read_back_as_typed() -> None:
    note = number_reread(making.tried(sizes={"depth": "6.5 mm"}), "mm")
    assert note.numbers == "read back"
    assert note.sizes is not None
    assert note.sizes.depth is not None
    assert note.sizes.depth.base == 6_500_000


def test_an_odd_number_of_which_nobody_said_the_unit_waits_as_before() -> None:
    note = making.tried(sizes={"depth": "6.5 mm"})
    assert number_reread(note, None) == note


@pytest.mark.parametrize("unit", [None, "mm", "in"])
def test_a_note_without_an_odd_number_is_left_as_it_is(unit: str | None) -> None:
    note = making.tried(sizes={"depth": "165 mm"})
    assert number_reread(note, unit) == note  # type: ignore[arg-type]


def cut_out(reads: str, of: str = "cut-out") -> object:
    return making.measured("m", making.reading(of, reads)).readings[0]


def test_what_was_taken_to_the_middle_is_doubled_with_its_tolerance() -> None:
    read = reading_reread(cut_out("72 mm"), "to the middle", 3 * MM)  # type: ignore[arg-type]
    assert (read.reads.base, read.reads.give) == (144 * MM, 6 * MM)
    typed = reading_reread(cut_out("72 ± 0.5 mm"), "to the middle", 3 * MM)  # type: ignore[arg-type]
    assert (typed.reads.base, typed.reads.give) == (144 * MM, MM)


def test_spacing_and_circle_change_places_only_where_one_was_taken_for_the_other() -> None:
    for of, said, becomes in (
        ("bolt circle", "hole spacing", "hole spacing"),
        ("hole spacing", "bolt circle", "bolt circle"),
        ("hole spacing", "hole spacing", "hole spacing"),
        ("bolt circle", "across", "bolt circle"),
        ("cut-out", None, "cut-out"),
        ("front clearance", "to the middle", "front clearance"),
    ):
        read = reading_reread(cut_out("110 mm", of), said, MM)  # type: ignore[arg-type]
        assert (read.of, read.reads.base) == (becomes, 110 * MM)
