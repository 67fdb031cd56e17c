"""What a speaker meets, by the trade's worked doors (common practice, no source)."""

import pytest

from tests.simulator.box_world import MM
from tests.simulator.doors.meeting import falls_through, met
from tests.simulator.doors.world import Foam, Mounting, Ring

# Compact hatch, front doors: glass 58 behind on the left and 55 on the right, 30 in front; foam 1.6 squeezed by 40 %.
FOAM = Foam("thin", 960_000)
SPEAKER = {"basket": 141 * MM, "basket short": 141 * MM, "depth": 63 * MM, "front": 12 * MM}


def spare(glass: int, ring: float, *, run: bool = True) -> dict[str, float]:
    room = {"long way": 151 * MM, "short way": 151 * MM, "fixed": 80 * MM, "worst": glass * MM, "front": 30 * MM}
    mounting = Mounting((Ring("ring", int(ring * MM), {}),), FOAM)
    return {one.size: one.spare / MM for one in met(room, mounting, SPEAKER, run=run)}


@pytest.mark.parametrize(
    ("ring", "left", "right", "grille"),
    [(10, 5.96, 2.96, 7.04), (12.7, 8.66, 5.66, 4.34), (18, 13.96, 10.96, -0.96)],
)
def test_what_is_left_to_the_glass_and_to_the_grille(ring: float, left: float, right: float, grille: float) -> None:
    assert spare(58, ring)["glass"] == pytest.approx(left)
    assert spare(55, ring)["glass"] == pytest.approx(right)
    assert spare(55, ring)["front"] == pytest.approx(grille)


def test_with_the_glass_up_it_stops_nothing() -> None:
    assert "glass" not in spare(10, 10, run=False)
    assert spare(10, 10, run=False)["fixed"] == pytest.approx(27.96)


def test_a_basket_of_141_meets_tabs_of_127_and_passes_143_once_they_are_out() -> None:
    bracket = Ring("bracket", 0, {"in": (127 * MM, 127 * MM), "out": (143 * MM, 143 * MM)}, tabs=True, ring=False)
    room = {"long way": 100 * MM, "short way": 100 * MM, "fixed": 80 * MM, "worst": 80 * MM, "front": 30 * MM}
    for tabs, left in (("in", -14), ("out", 2)):
        found = met(room, Mounting((bracket,), None, "in" if tabs == "in" else "out"), SPEAKER, run=True)
        assert [one.spare // MM for one in found if one.size == "long way"] == [left]


def test_a_flange_rests_on_the_hole_on_top() -> None:
    room = {"long way": 165 * MM, "short way": 165 * MM}
    ring = Ring("ring", 0, {"in": (150 * MM, 150 * MM), "out": (150 * MM, 150 * MM)})
    flange = {"flange": 160 * MM, "flange short": 160 * MM}
    assert falls_through(room, Mounting(), flange)
    assert not falls_through(room, Mounting((ring,)), flange)
