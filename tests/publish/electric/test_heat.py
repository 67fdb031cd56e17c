import pytest

from bezelbook.publish.electric.heat import HeatPart, heat_part
from bezelbook.values.quantity import read_quantity


def part(value: str, rated: str | None = None) -> HeatPart:
    watts = read_quantity(rated, "power", plus_minus=False) if rated else None
    made = heat_part(read_quantity(value, "resistance"), watts)
    assert made is not None
    return made


# Trade 4.8: 20 ohm take 5.2 W clean, 10.4 W square, 20 W boosted.
def test_twenty_ohm_are_said_case_by_case() -> None:
    rows = part("20 ohm").rows
    assert [row[1] for row in rows] == ["5.2 W", "10.4 W", "20 W"]
    assert [row[2] for row in rows] == ["12 W or more", "22 W or more", "47 W or more"]


@pytest.mark.parametrize(
    ("rated", "says"),
    [
        ("25 W", "It is rated 25 W, which is enough for all"),
        ("15 W", "It is rated 15 W, which is enough for clean sound, and too small"),
        ("10 W", "It is rated 10 W, which is too small even for clean sound"),
        (None, "What it is rated for is not looked, so whether it stands this is unknown."),
    ],
)
def test_what_it_is_rated_is_held_against_twice_the_heat(rated: str | None, says: str) -> None:
    assert part("20 ohm", rated).rated.startswith(says)


def test_what_was_metered_on_the_car_is_a_case_of_its_own_and_counts_when_it_is_more() -> None:
    def with_level(volts: str) -> HeatPart:
        ohm, rated = read_quantity("20 ohm", "resistance"), read_quantity("25 W", "power", plus_minus=False)
        made = heat_part(ohm, rated, read_quantity(volts, "voltage"))
        assert made is not None
        return made

    # 10 V across 20 ohm are 5 W, 20 V are 20 W, which want 40 W and more.
    low, high = with_level("10 V"), with_level("19 ± 1 V")
    assert low.rows[3] == ("output metered here, loud, 10 V", "5 W", "10 W or more")
    assert "enough for all" in low.rated
    assert high.rows[3] == ("output metered here, loud, 19 ± 1 V", "20 W", "47 W or more")
    assert "too small even for clean sound" in high.rated
    assert len(with_level("0 V").rows) == 3


def test_where_it_belongs_is_said_with_it() -> None:
    where = " ".join(part("20 ohm").where)
    assert "factory amplifier that stays and whose speaker is taken away" in where
    assert "to metal, clear of foam, tape and loom" in where


def test_nothing_is_worked_out_of_no_resistance() -> None:
    assert heat_part(read_quantity("0 ohm", "resistance"), None) is None
