"""What meets what, by the trade's own sums; common practice, no source."""

import pytest

from tests.simulator.box_world import MM, NINTHS, Kit, Room
from tests.simulator.meeting import meetings

# Room behind a dash as a wire finds it: deep at the centre and right, a duct at the lower left.
ROOM = Room({"width": 182 * MM, "height": 104 * MM}, dict.fromkeys(NINTHS, 205 * MM) | {"lower-left": 150 * MM})
FLUSH = Kit("flush", 0, {}, NINTHS, ())
PROUD = Kit("proud", 6 * MM, {"width": 180 * MM}, NINTHS, ())


def spare(kit: Kit, *, depth: int, plug: int = 32, rear: int = 0, plugs_on: bool = True) -> dict[str, int]:
    sizes = {"width": 178 * MM, "depth": depth * MM, "plug": plug * MM, "rear": rear * MM}
    met = meetings(ROOM, [kit], sizes, "right", plugs_on=plugs_on)
    return {f"{one.size} {one.ninth or ''}".strip(): one.spare // MM for one in met}


def test_a_body_of_165_with_its_plug_leaves_8_behind_a_flush_kit_and_14_behind_a_proud_one() -> None:
    assert spare(FLUSH, depth=165)["plug right"] == 8
    assert spare(PROUD, depth=165)["plug right"] == 14


@pytest.mark.parametrize(("depth", "plug_right"), [(110, 63), (185, -12)])
def test_a_shorter_and_a_longer_body(depth: int, plug_right: int) -> None:
    assert spare(FLUSH, depth=depth)["plug right"] == plug_right


def test_the_duct_decides_whatever_the_centre_says() -> None:
    assert spare(FLUSH, depth=165)["depth lower-left"] == -15
    assert spare(PROUD, depth=165)["depth lower-left"] == -9


def test_a_stud_longer_than_the_plug_and_its_bend_counts_instead_of_it() -> None:
    assert spare(FLUSH, depth=165, rear=10)["plug right"] == 8
    assert spare(FLUSH, depth=165, rear=35)["plug right"] == 5
    assert spare(FLUSH, depth=165, rear=10)["depth centre"] == 30


def test_plugs_that_are_off_ask_for_nothing() -> None:
    assert "plug right" not in spare(FLUSH, depth=165, plugs_on=False)


def test_a_kit_frames_what_it_frames_and_lets_the_rest_through() -> None:
    assert (spare(FLUSH, depth=1)["width"], spare(PROUD, depth=1)["width"]) == (4, 2)


def test_only_what_lies_behind_the_hole_is_met() -> None:
    low = Kit("low", 0, {}, NINTHS[3:6], ())
    assert set(spare(low, depth=165)) == {"width", "depth left", "depth centre", "depth right", "plug right"}
