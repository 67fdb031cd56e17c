"""Whether a part goes in in every room, in none, or neither, and what the house likes to leave over."""

from typing import Any

import pytest

from bezelbook.kinds.record import Record
from bezelbook.reasoning.cells import demands
from bezelbook.reasoning.needs import Need, needs_of_unit
from bezelbook.reasoning.outlook import Outlook, clearance, outlook, with_clearance
from tests.reasoning.making import (
    book,
    frame,
    length,
    measured,
    mount,
    place,
    reading,
    resolved,
    roomy,
    setting,
    shop,
    tried,
    unit,
)

MM = 1_000_000


@pytest.mark.parametrize(
    ("need", "nanometres"),
    [
        ("width", MM),
        ("height", MM // 2),
        ("depth", 3 * MM),
        ("plug", 3 * MM),
        ("nose width", MM // 2),
        ("nose height", MM // 2),
    ],
)
def test_the_house_likes_some_room_left_over_at_every_need(need: Need, nanometres: int) -> None:
    of = book(shop(clearances={"width": "1 mm", "height": "0.5 mm", "depth": "3 mm"}))
    assert clearance(frame(of), need) == nanometres


def test_a_demand_with_clearance_asks_for_that_much_more() -> None:
    of = book(unit(), shop(clearances={"depth": "3 mm"}))
    (*_, last), _ = demands(frame(of), needs_of_unit(of, of.head_units["box"]), setting(of))
    assert with_clearance(frame(of), last) == last._replace(shift=-3 * MM)


HOUSE = shop(clearances={"width": "1 mm", "height": "1 mm", "depth": "3 mm"})


def with_readings(depth: str, *more: Record, **state: Any) -> Outlook:
    """A question about a body of this depth without a plug, where the opening is 150 ± 3 mm deep."""
    of = book(HOUSE, measured("m", reading("depth", "150 ± 3 mm")), *more)
    asked = resolved(of, sizes={"depth": length(depth)}, plugs="off", **state)
    return outlook(place(of).all_notes, asked.needs, asked.settings)


def test_where_readings_carry_a_yes_the_house_clearance_is_left_over() -> None:
    assert with_readings("144 mm") == "always"
    assert with_readings("144.1 mm") == "open"
    assert with_readings("144 mm", cut="one rib") == "always"
    assert with_readings("144.1 mm", cut="one rib") == "open"


def test_a_house_clearance_never_makes_a_no() -> None:
    assert with_readings("152.9 mm") == "open"
    assert with_readings("153 mm") == "never"


def test_where_a_yes_covers_it_no_clearance_is_asked_for() -> None:
    fitted = tried(what="shelf", sizes={"depth": "148 ± 1 mm"}, plugs="off")
    assert with_readings("147 mm", fitted) == "always"
    assert with_readings("147 mm", fitted, cut="one rib") == "always"
    assert with_readings("147.1 mm", fitted) == "open"


def test_one_size_may_be_carried_by_readings_and_another_by_a_yes_in_a_meaner_state() -> None:
    fitted = tried(what="shelf", sizes={"depth": "148 ± 1 mm"}, plugs="off")
    of = book(HOUSE, measured("m", reading("depth", "150 ± 3 mm")), roomy(), fitted)
    sizes = {"width": length("178 mm"), "depth": length("147 mm")}
    asked = resolved(of, sizes=sizes, plugs="off", cut="one rib")
    assert outlook(place(of).all_notes, asked.needs, asked.settings) == "always"


def test_by_how_much_it_went_in_is_a_reading_and_asks_for_the_clearance() -> None:
    fitted = tried(what="shelf", sizes={"depth": "120 ± 1 mm"}, plugs="off", where=["left"], to_spare="27 ± 1 mm")
    assert with_readings("144.1 mm", fitted) == "open"


@pytest.mark.parametrize(("width", "alone", "covered"), [("149", "always", "always"), ("149.1", "open", "always")])
def test_a_caliper_on_the_hole_of_a_kit_asks_for_the_clearance_as_any_reading_does(
    width: str, alone: Outlook, covered: Outlook
) -> None:
    kit = mount(presents={"width": "150 mm caliper"})
    exact = shop(clearances={"width": "1 mm"}, tools={"bench_caliper": "0 mm"})
    yes = tried(what="box", mounts=["kit"])
    for records, found in ([(kit,), alone], [(kit, unit(body_width=f"{width} mm caliper"), yes), covered]):
        of = book(exact, *records)
        asked = resolved(of, sizes={"width": length(f"{width} mm")}, mounts=("kit",))
        assert outlook(place(of).all_notes, asked.needs, asked.settings) == found


def test_what_went_in_through_a_kit_carries_it_whatever_was_read_there() -> None:
    kit = mount(presents={"width": "150 mm caliper"})
    of = book(shop(clearances={"width": "1 mm"}), kit, unit(body_width="150 mm caliper"), tried(mounts=["kit"]))
    asked = resolved(of, unit="box", mounts=("kit",))
    assert outlook(place(of).all_notes, asked.needs, asked.settings) == "always"
