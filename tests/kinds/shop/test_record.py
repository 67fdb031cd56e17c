from typing import Any

import pytest
from pydantic import ValidationError

from bezelbook.kinds.shop.record import Shop

MM = 1_000_000
LEAST = {"id": "shop", "name": "The shop on the corner", "format": 1}


def shop(**fields: Any) -> Shop:
    return Shop.model_validate({**LEAST, **fields})


def test_a_name_and_a_format_are_enough() -> None:
    assert shop().units_first == "mm"
    assert shop().people == {}


@pytest.mark.parametrize("missing", ["name", "format"])
def test_neither_can_be_left_out(missing: str) -> None:
    with pytest.raises(ValidationError, match=missing):
        Shop.model_validate({field: value for field, value in LEAST.items() if field != missing})


@pytest.mark.parametrize(
    ("tool", "honest_mm"),
    # What the trade grants each tool in a car; a caliper on the bench ± 0.2, and ± 5 where no tool is named.
    [
        ("bench_caliper", 0.2),
        ("caliper", 0.5),
        ("depth_gauge", 1),
        ("tape", 3),
        ("wire", 5),
        ("template", 1),
        ("putty", 1),
        ("test_box", 1),
        ("none", 5),
    ],
)
def test_a_shop_that_says_nothing_trusts_its_tools_as_the_trade_does(tool: str, honest_mm: float) -> None:
    assert getattr(shop().tools, tool).base == honest_mm * MM


@pytest.mark.parametrize(
    ("clearance", "usual_mm"),
    [("width", 1), ("height", 0.5), ("depth", 0), ("glass", 5), ("fixed", 3), ("grille", 3)],
)
def test_a_shop_that_says_nothing_leaves_the_usual_room(clearance: str, usual_mm: float) -> None:
    assert getattr(shop().clearances, clearance).base == usual_mm * MM


def test_what_the_shop_says_counts_and_the_rest_stays_usual() -> None:
    tools = shop(tools={"tape": "1/8 in"}).tools
    assert (tools.tape.base, tools.wire.base) == (3_175_000, 5 * MM)


@pytest.mark.parametrize("number", [0, 1.5, "1", None])
def test_a_format_is_a_whole_number_from_one(number: object) -> None:
    with pytest.raises(ValidationError, match="format"):
        shop(format=number)


def test_a_newer_format_still_loads_so_that_it_can_be_told_apart() -> None:
    assert shop(format=2).format == 2


def test_people_are_initials_with_what_they_do() -> None:
    assert shop(people={"ab": "Lead installer"}).people["ab"] == "Lead installer"
    with pytest.raises(ValidationError, match="people"):
        shop(people={"A. Body": "Lead installer"})


def test_a_tolerance_is_never_a_bare_number() -> None:
    with pytest.raises(ValidationError, match="bare number"):
        shop(tools={"tape": 3})
