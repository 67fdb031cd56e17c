"""Preferred values and the heat in a resistor are as others have them.

`preferred_values.csv` and `preferred_cases.csv`: IEC 60063 as the package eseries 1.2.1 has it (E12 and E24 were also
read in open notes). `resistor_heat.csv`: Joule's law with the lowest value that the tolerance allows, computed apart
with floating point.
"""

import csv
from fractions import Fraction
from pathlib import Path

import pytest

from bezelbook.reasoning.electric.amounts import Range
from bezelbook.reasoning.electric.dissipation import TIMES_EXPECTED, heat_at_peak, heat_at_reading
from bezelbook.reasoning.electric.preferred import Series, nearest, no_less, no_more

DATA = Path(__file__).parent / "data"
SERIES: tuple[Series, ...] = ("E3", "E6", "E12", "E24")


def rows(name: str) -> list[dict[str, str]]:
    with (DATA / f"{name}.csv").open(encoding="utf-8", newline="") as lines:
        return list(csv.DictReader(lines))


@pytest.mark.parametrize("series", SERIES)
def test_a_series_has_the_members_of_the_standard(series: Series) -> None:
    [row] = [row for row in rows("preferred_values") if row["series"] == series]
    members = [Fraction(member) for member in row["values_1_to_10"].split()]
    assert len(members) == int(row["n"])
    found = [Fraction(1)]
    while (next_one := no_less(found[-1] + Fraction(1, 1000), series)) < 10:
        found.append(next_one)
    assert found == members


@pytest.mark.parametrize("row", rows("preferred_cases"), ids=lambda row: row["value"])
def test_the_next_value_is_the_one_that_a_package_for_it_gives(row: dict[str, str]) -> None:
    value = Fraction(row["value"])
    assert nearest(value, "E12") == Fraction(row["E12_nearest_abs"])
    assert no_more(value, "E12") == Fraction(row["E12_floor"])
    assert no_less(value, "E12") == Fraction(row["E12_ceil"])
    assert nearest(value, "E24") == Fraction(row["E24_nearest_abs"])
    assert no_less(value, "E24") == Fraction(row["E24_ceil"])


@pytest.mark.parametrize("row", rows("resistor_heat"), ids=lambda row: f"{row['R_ohm']} ohm at {row['V']} V")
def test_a_resistor_takes_what_joules_law_says(row: dict[str, str]) -> None:
    volts, nominal = Fraction(row["V"]), Fraction(row["R_ohm"])
    lowest = nominal * (1 - Fraction(row["tol_pct"]) / 100)
    exact = Range(nominal, nominal)
    loose = Range(lowest, 2 * nominal - lowest)
    assert float(heat_at_reading(exact, volts)) == pytest.approx(float(row["P_W_nominal"]), rel=1e-5)
    assert float(heat_at_reading(loose, volts)) == pytest.approx(float(row["P_W_worst_low_R"]), rel=1e-5)
    assert heat_at_peak(loose, volts).square == heat_at_reading(loose, volts)
    derated = TIMES_EXPECTED * heat_at_reading(loose, volts)
    assert float(derated) == pytest.approx(float(row["rating_W_at_50pct_derating"]), rel=1e-5)
