"""What a number outside the usual was meant to be, by the arithmetic of units alone (1 in = 25.4 mm exactly)."""

import pytest

from bezelbook.reasoning.slips.repairs import off_the_rule, repairs
from bezelbook.values.quantity import read_quantity

MM = 1_000_000


@pytest.mark.parametrize(
    ("typed", "dimension", "low", "high", "meant"),
    [
        (
            "6.5 mm",
            "length",
            20 * MM,
            220 * MM,
            [("inches", "165.1 mm (6 1/2 in)"), ("centimetres", "65 mm (2.56 in)")],
        ),
        ("2.38 mm", "length", 40 * MM, 200 * MM, [("inches", "60.3 mm (2 3/8 in)")]),
        ("23.8 mm", "length", 59 * MM, 62 * MM, [("inches, the point slipped", "60.3 mm (2 3/8 in)")]),
        ("165 in", "length", 20 * MM, 220 * MM, [("millimetres", "165 mm (6.50 in)")]),
        ("165 cm", "length", 20 * MM, 220 * MM, [("millimetres", "165 mm (6.50 in)")]),
        ("2 min", "time", 300, 54_000, [("hours", "2 h")]),
        ("4 kohm", "resistance", MM, 16 * MM, [("thousandths", "4 ohm")]),
        ("0.1 W", "power", 2 * MM, 100 * MM, []),
    ],
)
def test_a_slip_is_read_back_in_the_unit_that_mends_it(
    typed: str, dimension: str, low: int, high: int, meant: list[tuple[str, str]]
) -> None:
    assert list(repairs(read_quantity(typed, dimension), low, high)) == meant


def test_only_what_a_rule_shows_is_taken_as_a_fraction() -> None:
    assert off_the_rule(60_452_000) == 60_325_000  # 2.38 in was 2 3/8 in
    assert off_the_rule(61_000_000) == 61_000_000
