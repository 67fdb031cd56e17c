"""Lengths are what the standards say, also where a general unit library misreads them.

The data beside this file: `units_exact.csv` (NIST SP 811, 2008, appendix B.8, from the yard-pound agreement of 1959),
`mixed_fractions.csv` (exact rationals by 25.4 mm to the inch), `quantity_readings.csv` (what each text is meant to
say, and what the unit library pint 0.25.3 made of it).
"""

import csv
from fractions import Fraction
from pathlib import Path

import pytest

from bezelbook.values.complaint import Wrong
from bezelbook.values.quantity import read_quantity
from bezelbook.values.unit import FOOT, INCH

DATA = Path(__file__).parent / "data"
MM = 1_000_000


def rows(name: str) -> list[dict[str, str]]:
    with (DATA / name).open(encoding="utf-8", newline="") as lines:
        return list(csv.DictReader(lines))


EXACT = {row["unit"]: Fraction(row["factor"]) for row in rows("units_exact.csv")}
READINGS = rows("quantity_readings.csv")
# A careful shop would not guess at these either: each can be meant in two ways, or is no length as it stands.
REFUSED = {
    *("6in 1/2", "1,000 mm", "50(1) mm", "5 mm # note", "1 ft + 2 in", "1 mil", "1 thou"),
    *("1/2 1/4 in", "2-3 mm", "182 x 53 mm", "6x9 in", "5 inches 3", "5 mm mm", "mm", "nan mm"),
}


def length(text: str) -> Fraction | None:
    """The length in mm that is read, if any."""
    try:
        quantity = read_quantity(text, "length", signed=True)
    except Wrong:
        return None
    return Fraction(quantity.base, MM)


def test_an_inch_and_a_foot_are_exact() -> None:
    assert Fraction(INCH.size, MM) == EXACT["inch"]
    assert Fraction(FOOT.size, MM) == EXACT["foot"]


@pytest.mark.parametrize("part", ["1/16", "1/32", "1/64"])
def test_a_part_of_an_inch_is_exact(part: str) -> None:
    assert length(f"{part} in") == EXACT[f"{part} inch"]


def test_a_thousandth_of_an_inch_can_be_written_in_inches() -> None:
    assert length("0.001 in") == EXACT["mil (thou, 0.001 in)"]


@pytest.mark.parametrize("row", rows("mixed_fractions.csv"), ids=lambda row: row["inch_text"])
@pytest.mark.parametrize("unit", [" in", '"', "in"])
def test_a_mixed_fraction_is_the_exact_rational(row: dict[str, str], unit: str) -> None:
    assert length(f"{row['inch_text']}{unit}") == Fraction(row["mm_exact_fraction"])
    assert abs(Fraction(row["mm"]) - Fraction(row["mm_exact_fraction"])) < Fraction(1, 10**6)


def intended(row: dict[str, str]) -> Fraction | None:
    """The length in mm that the text is meant to say, when it is meant to say one."""
    number, _, unit = row["intended"].partition(" ")
    return Fraction(number) if unit in {"mm", "mm +-1"} else None


@pytest.mark.parametrize("row", READINGS, ids=lambda row: row["input"])
def test_a_text_is_read_as_it_was_meant_or_refused(row: dict[str, str]) -> None:
    read = length(row["input"])
    assert read in {None, intended(row)}
    assert (read is None) == (intended(row) is None or row["input"] in REFUSED)


def test_a_give_is_read_as_it_was_meant() -> None:
    assert read_quantity("50±1 mm", "length").give == MM


def test_the_library_s_silent_misreadings_are_all_read_right_or_refused() -> None:
    silent = [row for row in READINGS if "SILENT" in row["hazard"]]
    assert len(silent) >= 30
    assert [row["input"] for row in silent if length(row["input"]) not in {None, intended(row)}] == []
