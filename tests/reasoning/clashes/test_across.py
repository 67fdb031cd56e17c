"""What explains a hole: a radius, a size that speakers are sold as, a tab (trade practice, no source)."""

import pytest

from bezelbook.reasoning.clashes.across import not_across
from tests.reasoning.clashes.made import LEFT, book, measured, speaker, tried
from tests.reasoning.making import record

BRACKET = record(
    "mounts",
    "bracket",
    {"name": "bracket", "mount_kind": "bracket", "tabs_in": "127 mm caliper", "tabs_out": "143 mm caliper"},
)
PLAIN = record("mounts", "plain", {"name": "plain", "mount_kind": "bracket", "inner": "127 mm caliper"})


@pytest.mark.parametrize(
    ("one", "other", "why"),
    [
        ("72 mm", "143 mm", "radius"),
        ("165 mm", "143 mm", "nominal"),
        ("165.1 mm", "143 mm", "nominal"),
        ("127 ± 0.5 mm", "143 ± 0.5 mm", "tabs"),
        ("127 ± 0.5 mm", "150 ± 0.5 mm", None),
        ("131 mm", "151 mm", None),
    ],
)
def test_two_holes(one: str, other: str, why: str | None) -> None:
    notes = [measured(name, ("cut-out", reads), place=LEFT) for name, reads in (("a", one), ("b", other))]
    found = not_across(book(BRACKET, PLAIN, *notes), notes)  # type: ignore[arg-type]
    assert (found.why if found else None) == why


@pytest.mark.parametrize(("typed", "why"), [("72 mm", "radius"), ("100 mm", None)])
def test_a_hole_and_a_basket_that_is_in(typed: str, why: str | None) -> None:
    six = speaker("six", basket="141 mm caliper")
    notes = [
        tried("in", "six", "goes in", place=LEFT),
        measured("a", ("cut-out", typed), ("front clearance", "30 mm"), place=LEFT),
    ]
    found = not_across(book(six, *notes), notes)  # type: ignore[arg-type]
    assert (found.why if found else None) == why


def test_a_hole_that_was_typed_with_what_was_tried() -> None:
    note = tried("a", "some six", "does not", place=LEFT, sizes={"cut_out": "165 mm"})
    plain = tried("b", "some six", "goes in", place=LEFT, sizes={"basket": "141 mm"})
    found = not_across(book(note, plain), [note, plain])  # type: ignore[list-item]
    assert found is not None
    assert (found.note, found.path) == ("a", ("sizes", "cut_out"))
