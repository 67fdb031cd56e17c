from typing import Any

from bezelbook.publish.opening import Opening
from bezelbook.publish.reach import Reach, reach

MM = 1_000_000


def cell(need: str, sure: int) -> dict[str, Any]:
    return {"need": need, "sure": sure * MM}


def place(*accounts: dict[str, Any]) -> dict[str, Any]:
    return {"accounts": [{"settings": [account]} for account in accounts]}


def setting(cells: list[dict[str, Any]], *leaves: list[dict[str, int]]) -> dict[str, Any]:
    return {"cells": cells, "leaves": [[{cell: at * MM for cell, at in no.items()} for no in noes] for noes in leaves]}


CELLS = [cell("width", 180), cell("depth", 150), cell("depth", 147), cell("depth", 200)]


def test_the_worked_example_goes_in_to_147_and_does_not_from_153(dash: Opening) -> None:
    """Trade 13: the duct at 150 ± 3 decides; an exact typed size moves 146 and 154 to 147 and 153."""
    early, late = (reach(dash.corners, number, "depth") for number in (0, 1))
    assert early == Reach(0, None, None)
    assert late == Reach(147 * MM, 153 * MM, None)


def test_the_shallowest_ninth_decides_how_far_it_is_sure() -> None:
    found = reach(place(setting(CELLS, [{"1": 190}, {"2": 160}])), 0, "depth")
    assert found == Reach(147 * MM, 160 * MM, None)


def test_a_no_that_another_size_may_have_caused_refuses_no_depth() -> None:
    assert reach(place(setting(CELLS, [{"0": 182, "1": 160}])), 0, "depth").refused is None
    assert reach(place(setting(CELLS, [{"1": 160, "3": 170}])), 0, "depth").refused == 170 * MM


def test_what_one_way_of_reading_the_notes_still_takes_is_not_refused() -> None:
    assert reach(place(setting(CELLS, [{"1": 160}], [{"1": 175}])), 0, "depth").refused == 175 * MM
    assert reach(place(setting(CELLS, [{"1": 160}], [])), 0, "depth").refused is None


def test_where_accounts_differ_it_is_argued_over() -> None:
    less = setting([cell("depth", 100)], [{"0": 122}])
    more = setting([cell("depth", 140)], [])
    assert reach(place(less, more), 0, "depth") == Reach(100 * MM, None, 122 * MM)
    most = setting([cell("depth", 140)], [{"0": 170}])
    assert reach(place(less, most), 0, "depth") == Reach(100 * MM, 170 * MM, 122 * MM)
    assert reach(place(most, most), 0, "depth").argued is None


def test_a_room_that_takes_nothing_refuses_from_nothing_on() -> None:
    assert reach(place(setting([cell("depth", -1)], [{}])), 0, "depth") == Reach(0, 0, None)
