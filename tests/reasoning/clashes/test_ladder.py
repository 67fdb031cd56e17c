"""Which yes is deeper than which no, and which of those pairs a blank may explain."""

from typing import Any

import pytest

from bezelbook.reasoning.clashes.ladder import leave_it_open, reversed_pairs
from tests.reasoning.clashes.made import CAR, DASH, book, tried, unit

UNITS = (unit("deep", "170 ± 1 mm caliper"), unit("deeper", "185 ± 1 mm caliper"))
NO = tried("no", "deep", "does not", reason="depth")


@pytest.mark.parametrize(
    ("more", "open_"),
    [({}, False), ({"loom": None, "cut": None}, True), ({"mounts": None}, True), ({"sure": "told"}, False)],
)
def test_only_a_blank_in_strong_notes_leaves_it_open(more: dict[str, Any], *, open_: bool) -> None:
    said = book(*UNITS, NO, tried("yes", "deeper", "goes in", **more))
    car = said.vehicles[CAR]
    ((yes, no),) = reversed_pairs(said, car, DASH)
    assert (yes.note.id, no.note.id) == ("yes", "no")
    assert leave_it_open(said, car, DASH, yes, no) is open_
