"""Circles from spacings, `c = D sin(180 degrees / n)`: 110 on four holes is 155.6, 135 on three is 155.9."""

from typing import Any

import pytest

from bezelbook.reasoning.clashes.bolt_circles import circles_apart, instead
from tests.reasoning.clashes.made import CAR, LEFT, book, measured

MM = 1_000_000


@pytest.mark.parametrize(
    ("spacing", "count", "tenths"), [(110, 4, 1556), (135, 3, 1559), (78, 6, 1560), (110, None, 1556), (150, 4, None)]
)
def test_the_circle_behind_a_spacing(spacing: int, count: int | None, tenths: int | None) -> None:
    found = instead(spacing * MM, count, 156 * MM, 156 * MM)
    assert (None if found is None else round(found / 100_000)) == tenths


def test_two_holes_stand_on_no_circle() -> None:
    assert instead(110 * MM, 2, 156 * MM, 156 * MM) is None


def test_a_reading_that_is_a_spacing_is_told_with_its_circle() -> None:
    notes = [
        measured("a", ("bolt circle", "110 ± 0.5 mm"), place=LEFT, bolt_holes={"count": 4}),
        measured("b", ("bolt circle", "156 ± 0.5 mm"), ("hole spacing", "10 mm"), place=LEFT),
    ]
    (apart,) = circles_apart(book(*notes), CAR, LEFT)
    assert (apart.first.note.id, apart.other.note.id, apart.meant[:8]) == ("a", "b", "155.6 mm")


@pytest.mark.parametrize(("tenths", "counted", "expected"), [(1095, True, 1), (1095, False, 0), (1200, True, 0)])
def test_circles_of_two_builds_are_told_apart_only_where_one_is_counted_to_be_a_spacing(
    tenths: int, *, counted: bool, expected: int
) -> None:
    builds: Any = {"build": {"values": {"early": {}, "late": {}}}}
    holes = {"bolt_holes": {"count": 4}} if counted else {}
    notes = [
        measured("a", ("bolt circle", f"{tenths / 10} ± 0.5 mm"), place=LEFT, splits={"build": "late"}, **holes),
        measured("b", ("bolt circle", "155 ± 0.5 mm"), place=LEFT, splits={"build": "early"}),
    ]
    assert len(circles_apart(book(*notes, splits=builds), CAR, LEFT)) == expected
