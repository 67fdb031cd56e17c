"""The rings for a side, by the trade's worked doors (trade.md 4.4; common practice, no source)."""

import pytest

from bezelbook.reasoning.speakers.thickness import End
from bezelbook.reasoning.speakers.window import RingVerdict, Window, foam_height, for_both, window
from tests.reasoning.speakers.doors import (
    BUILDS,
    DOOR,
    OTHER,
    book,
    car,
    foam,
    measured,
    mount,
    place,
    reading,
    resolved,
    roomy,
    shop,
    speaker,
    tried,
)

MM = 1_000_000
HOUSE = shop(glass="5 mm", grille="3 mm", fixed="3 mm")
DEEP = speaker(mounting_depth="63 ± 0.2 mm", front_height="12 ± 0.2 mm")
FOAM = foam(free_thickness="1.6 mm", squeeze="40 %")
RINGS = [
    mount("ten", thickness="10 ± 0.2 mm"),
    mount("half-inch", thickness="12.7 ± 0.2 mm"),
    mount("eighteen", thickness="18 ± 0.2 mm"),
]


def side(glass: str, where: str) -> Window:
    sides = [
        measured(
            where,
            reading("cut-out", "151 ± 1 mm"),
            reading("rear depth to glass down", glass),
            reading("front clearance", "30 ± 1 mm"),
            place=where,
        )
    ]
    of = book(HOUSE, DEEP, FOAM, *RINGS, *sides)
    return window(place(of, where), resolved(of, where, gasket="foam"))


def test_the_worked_doors() -> None:
    left, right = side("58 ± 1 mm", DOOR), side("55 ± 1 mm", OTHER)
    assert left.low is not None
    assert left.high is not None
    assert right.low is not None
    assert (left.low.at, left.high.at, right.low.at) == (9_040_000, 14_040_000, 12_040_000)
    assert (left.low.give, left.high.give) == (1_200_000, 1_200_000)
    assert left.rings == (
        RingVerdict("eighteen", "eighteen", 18 * MM, "too close", 13_960_000, -960_000),
        RingVerdict("half-inch", "half inch", 12_700_000, "goes in", 8_660_000, 4_340_000),
        RingVerdict("ten", "ten", 10 * MM, "goes in", 5_960_000, 7_040_000),
    )
    assert [ring.ring for ring in left.good] == ["half-inch", "ten"]
    assert for_both([left, right]) == ("half-inch",)
    assert not left.empty


@pytest.mark.parametrize(("early", "late"), [("58 ± 1 mm", "55 ± 1 mm"), ("55 ± 1 mm", "58 ± 1 mm")])
def test_of_several_builds_the_one_with_the_least_left_over_counts(early: str, late: str) -> None:
    # By hand: 55 to the glass + 10 of ring + 0.96 of foam - 63 of speaker is 2.96 mm.
    notes = [
        measured(
            build,
            reading("cut-out", "151 ± 1 mm"),
            reading("rear depth to glass down", glass),
            reading("front clearance", front),
            splits={"build": build},
        )
        for build, glass, front in (("early", early, "30 ± 1 mm"), ("late", late, "32 ± 1 mm"))
    ]
    of = book(HOUSE, DEEP, FOAM, car(splits=BUILDS), RINGS[0], *notes)
    [ten] = window(place(of), resolved(of, gasket="foam")).rings
    assert (ten.behind, ten.front) == (2_960_000, 7_040_000)


@pytest.mark.parametrize("glass", [("70 ± 1 mm", "62 ± 1 mm"), ("62 ± 1 mm", "70 ± 1 mm")])
def test_of_notes_that_cannot_all_be_true_that_with_the_least_left_over_counts(glass: tuple[str, str]) -> None:
    """By hand: 62 to the glass + 10 of ring - 60 of speaker is 12 mm; the ring leaves 20 - 10 - 10 in front."""
    of = book(RINGS[0], *(roomy(name, glass=read) for name, read in zip("ab", glass, strict=True)))
    found = window(place(of), resolved(of))
    assert found.argued
    assert [(ring.behind, ring.front) for ring in found.rings] == [(12 * MM, 0)]


def test_a_window_may_be_empty() -> None:
    found = side("48 ± 1 mm", DOOR)
    assert found.empty
    assert found.good == ()


def test_a_window_of_one_thickness_is_not_empty() -> None:
    assert not Window(End(5, 0, "glass"), End(5, 0, "front"), ()).empty
    assert Window(End(6, 0, "glass"), End(5, 0, "front"), ()).empty


def test_of_no_side_no_ring_is_good() -> None:
    assert for_both([]) == ()


def test_nothing_is_told_of_a_side_that_is_argued_over() -> None:
    of = book(*RINGS, roomy(glass="50 ± 1 mm"), tried())
    found = window(place(of), resolved(of))
    assert (found.argued, found.low, found.high, found.empty) == (True, None, None, False)
    assert [ring.ring for ring in found.rings] == ["eighteen", "half-inch", "ten"]


def test_an_unmeasured_side_leaves_nothing_over_that_anybody_knows() -> None:
    of = book(*RINGS)
    found = window(place(of), resolved(of))
    assert {(ring.behind, ring.front, ring.verdict) for ring in found.rings} == {(None, None, "nobody has tried")}


def test_the_front_ring_is_17_6_high() -> None:
    height = foam_height(30 * MM, 12_700_000 + 960_000, 4 * MM)
    assert height * 7 / 10 == 12_340_000
    assert round(float(height) / MM, 1) == 17.6
