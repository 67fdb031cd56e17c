"""Copper, gauges, runs and fuses are as the standards and handbooks print them.

`awg.csv` beside this file: the law of the American gauge (ASTM B258; NBS Handbook 100, section 2.1), computed apart
with floating point, beside what was printed: Circular 31 of the NBS (12 to 24 read, the rest from memory), and table
1 of ASTM B258-02 as read, which rounds each diameter to 0.1 mil first and so is up to 0.39 % away.
`copper_constants.csv`: NBS Handbook 100, sections 1.1 and 2.1, quoted.
`iec60228_resistance.csv`: the most that plain copper may resist by IEC 60228, tables 1 to 4, read in four documents.
`copper_temperature.csv`: the temperature law of NBS Handbook 100, computed. `voltage_drops.csv`: cases constructed for
this project and computed apart. `blade_fuses.csv`: ratings of ISO 8820-3, each row with how it is known; only those
that were read are held against ours.
"""

import csv
from fractions import Fraction
from pathlib import Path

import pytest

from bezelbook.reasoning.electric.amounts import Range
from bezelbook.reasoning.electric.conductor import CONDUCTIVITY, PER_DEGREE, at_temperature, conductor
from bezelbook.reasoning.electric.drop import drop
from bezelbook.reasoning.electric.fuse import RATINGS
from bezelbook.reasoning.electric.gauge import copper_in, gauge_number, gauge_words

DATA = Path(__file__).parent / "data"


def rows(name: str) -> list[dict[str, str]]:
    with (DATA / f"{name}.csv").open(encoding="utf-8", newline="") as lines:
        return list(csv.DictReader(lines))


CONSTANTS = {row["id"]: row["value"] for row in rows("copper_constants")}
GAUGES = rows("awg")
by_gauge = pytest.mark.parametrize("row", GAUGES, ids=[row["awg"] for row in GAUGES])


def near(value: Fraction, printed: str, within: float) -> bool:
    return abs(float(value) / float(printed) - 1) <= within


@by_gauge
def test_a_gauge_holds_the_copper_that_the_law_says(row: dict[str, str]) -> None:
    area = copper_in(int(row["n"]))
    # Half a unit of the last place of the table.
    assert abs(area.low - Fraction(row["formula_area_mm2"])) <= Fraction(1, 10**5)
    assert area.low < area.high
    assert area.high - area.low < area.low / 10**15


@by_gauge
def test_a_gauge_resists_what_the_law_says(row: dict[str, str]) -> None:
    metre = conductor(gauge_words(int(row["n"]))).per_metre
    assert abs(metre.low * 1000 - Fraction(row["formula_mohm_per_m_20C"])) <= Fraction(1, 10**5)
    thousand_feet = metre.low * 1000 * Fraction(3048, 10000)
    assert abs(thousand_feet - Fraction(row["formula_ohm_per_kft_20C"])) <= Fraction(1, 10**5)


@by_gauge
def test_a_gauge_resists_what_circular_31_prints(row: dict[str, str]) -> None:
    printed = row["circular31_ohm_per_kft_print"]
    # Four digits are printed, of the very diameters of the law.
    assert near(conductor(gauge_words(int(row["n"]))).per_metre.low * Fraction(3048, 10), printed, 0.0006)


@by_gauge
def test_a_gauge_is_within_half_a_per_cent_of_the_table_that_rounds_the_diameter_first(row: dict[str, str]) -> None:
    area = copper_in(int(row["n"])).low
    # The area by the table's own diameter, in circular mils: one is pi/4 of a square mil.
    circular_mils = Fraction(row["b258_nominal_mil"]) ** 2
    assert near(area / circular_mils, str(0.7853981633974483 * 0.0254**2), 0.005)
    # The printed area has three digits.
    assert near(area, row["b258_print_mm2"], 0.012)


def test_the_two_anchors_of_the_law_are_exact() -> None:
    def square_of_diameter(number: int) -> Fraction:
        # Area by pi over four, with pi cancelled: the ratio to number 36 alone.
        return copper_in(number).low / copper_in(36).low

    ratio = (Fraction(CONSTANTS["awg.anchor.0000"]) / Fraction(CONSTANTS["awg.anchor.36"])) ** 2
    assert abs(square_of_diameter(gauge_number("4/0")) - ratio) < Fraction(1, 10**12)
    assert copper_in(36).low / Fraction(127, 1000) ** 2 == pytest.approx(0.785398163397448)


def test_each_gauge_is_the_printed_ratio_thicker_than_the_next() -> None:
    for number in range(-3, 40):
        ratio = copper_in(number).low / copper_in(number + 1).low
        assert near(ratio, CONSTANTS["awg.ratio2"], 1e-6)
    assert near(copper_in(4).low / copper_in(10).low, str(float(CONSTANTS["awg.ratio6"]) ** 2), 1e-6)


def test_the_constants_of_copper_are_the_handbooks() -> None:
    assert str(CONDUCTIVITY) == CONSTANTS["iacs.conductivity"]
    assert Fraction(CONSTANTS["iacs.alpha20"]) == PER_DEGREE
    assert near(conductor("1 mm2").per_metre.low / 10**6, CONSTANTS["iacs.resistivity"], 1e-12)


@pytest.mark.parametrize("row", rows("iec60228_resistance"), ids=lambda row: row["area_mm2"])
def test_a_metric_wire_resists_less_than_the_standard_lets_it_and_at_most_a_sixth_less(row: dict[str, str]) -> None:
    ours = conductor(f"{row['area_mm2']} mm2").per_metre.high * 1000
    assert near(ours, row["iacs_ohm_per_km"], 1e-4)
    for most in ("class1_2_plain_ohm_per_km_20C", "class5_6_plain_ohm_per_km_20C"):
        assert ours < Fraction(row[most]) < ours * Fraction(7, 6)


@pytest.mark.parametrize("row", rows("copper_temperature"), ids=lambda row: row["t_C"])
def test_heat_adds_to_resistance_as_the_handbook_says(row: dict[str, str]) -> None:
    assert at_temperature(Fraction(1), Fraction(row["t_C"])) == Fraction(row["R_over_R20"])


@pytest.mark.parametrize("row", rows("voltage_drops"), ids=lambda row: f"{row['awg']} AWG {row['current_A']} A")
def test_a_run_drops_what_was_worked_out_apart(row: dict[str, str]) -> None:
    wire = conductor(gauge_words(int(row["awg"])))
    amps, there_and_back = Fraction(row["current_A"]), 2 * Fraction(row["one_way_length_m"])
    dropped = drop(Range(amps, amps), wire, there_and_back)
    assert abs(dropped.volts.low - Fraction(row["drop_V_20C"])) <= Fraction(1, 10**5)
    assert abs(at_temperature(dropped.volts.low, Fraction(60)) - Fraction(row["drop_V_60C"])) <= Fraction(1, 10**5)
    assert abs(wire.per_metre.low * there_and_back * 1000 - Fraction(row["loop_R_mohm_20C"])) <= Fraction(1, 10**5)
    assert (dropped.says == "fine") == (float(row["drop_V_20C"]) <= 0.5)


def test_the_fuses_up_to_a_hundred_amps_are_those_that_are_made() -> None:
    read = {Fraction(row["rating_A"]) for row in rows("blade_fuses") if row["confidence"] in ("high", "medium")}
    told = {Fraction(row["rating_A"]) for row in rows("blade_fuses")}
    ours = {rating for rating in RATINGS if rating <= 100}
    assert read <= ours <= told
