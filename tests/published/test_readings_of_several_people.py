"""How far one person's readings repeat and how much lies between persons, against certified and published figures.

NIST Statistical Reference Datasets, analysis of variance, all eleven, with their certified values: the files as they
are inside the scipy package, which uses them for its own tests. Ours are exact fractions, so that every digit counts.

JCGM 100:2008 (GUM) H.5, ten days of five readings: means and deviations of the days, the mean, 57 µV, 85 µV and F as
read in an open implementation of the GUM; the rest from memory, and reproduced by scipy. The printed F of 2.25 is of
the rounded figures. GUM 4.4.3, twenty readings: from memory; they give the printed mean, deviation and uncertainty.

Davies (1947), yields of dyestuff, and Box and Tiao (1973), made-up ones, both as the R package lme4 has them: the
second has less between its batches than within them.
"""

import re
from fractions import Fraction
from importlib.resources import files
from math import sqrt
from typing import NamedTuple

import pytest
import scipy.stats

from bezelbook.reasoning.agreement.components import Components, Group, components, group_of

NIST = files("scipy.stats").joinpath("tests", "data", "nist_anova")
SETS = ("SiRstv", "AtmWtAg", *(f"SmLs0{number}" for number in range(1, 10)))
DAYS = ("172", "116", "013", "144", "106", "031", "060", "125", "163", "041")
DAY_DEVIATIONS = (60, 77, 111, 101, 67, 93, 80, 73, 88, 86)
TWENTY = (
    "96.90 98.18 98.25 98.61 99.03 99.49 99.56 99.74 99.89 100.07"
    " 100.33 100.42 100.68 100.95 101.11 101.20 101.57 101.84 102.36 102.72"
)
BATCHES = (1505, 1528, 1564, 1498, 1600, 1470)


class Certified(NamedTuple):
    """What NIST certifies of a set, each to its last digit, and the readings by group."""

    between: tuple[int, str, str, str]
    within: tuple[int, str, str]
    deviation: str
    groups: dict[str, list[Fraction]]


def certified(name: str) -> Certified:
    text = NIST.joinpath(f"{name}.dat").read_text(encoding="ascii")
    between = re.search(r"^Between \w+ +(\d+) +(\S+) +(\S+) +(\S+)$", text, re.MULTILINE)
    within = re.search(r"^Within \w+ +(\d+) +(\S+) +(\S+)$", text, re.MULTILINE)
    deviation = re.search(r"Standard Deviation +(\S+)", text)
    assert between is not None
    assert within is not None
    assert deviation is not None
    groups: dict[str, list[Fraction]] = {}
    for line in text.splitlines()[60:]:
        if line.strip():
            group, reading = line.split()
            groups.setdefault(group, []).append(Fraction(reading))
    return Certified(
        (int(between[1]), between[2], between[3], between[4]),
        (int(within[1]), within[2], within[3]),
        deviation[1],
        groups,
    )


@pytest.mark.parametrize("name", SETS)
def test_a_certified_set_comes_out_to_its_last_digit(name: str) -> None:
    known = certified(name)
    found = components([group_of(readings) for readings in known.groups.values()])
    assert found.ratio is not None
    assert found.freedom == (known.between[0], known.within[0])
    for ours, theirs in (
        (found.between * found.freedom[0], known.between[1]),
        (found.between, known.between[2]),
        (found.ratio, known.between[3]),
        (found.within * found.freedom[1], known.within[1]),
        (found.within, known.within[2]),
    ):
        assert abs(ours / Fraction(theirs) - 1) < Fraction(1, 10**14)
    assert sqrt(found.within) == pytest.approx(float(known.deviation), rel=1e-14)


def test_the_resistivity_of_silicon_by_five_instruments_lies_a_little_apart() -> None:
    """Computed in exact fractions by code that the project does not hold."""
    found = components([group_of(readings) for readings in certified("SiRstv").groups.values()])
    assert float(found.mean) == pytest.approx(196.189156, abs=1e-9)
    assert sqrt(found.variance_between) == pytest.approx(0.0197723918634, abs=1e-12)


def ten_days() -> Components:
    micro = Fraction(1, 10**6)
    days = zip(DAYS, DAY_DEVIATIONS, strict=True)
    return components([Group(5, 10 + int(mean) * micro, (deviation * micro) ** 2) for mean, deviation in days])


def test_ten_days_of_voltage_come_to_the_published_figures() -> None:
    found = ten_days()
    assert float(found.mean) == pytest.approx(10.000097, abs=5e-7)
    assert sqrt(found.between / 5) * 1e6 == pytest.approx(57, abs=0.5)
    assert sqrt(found.within) * 1e6 == pytest.approx(85, abs=0.5)
    assert float(found.ratio or 0) == pytest.approx(2.25, abs=0.02)
    assert sqrt(found.between) * 1e6 == pytest.approx(128, abs=0.5)
    assert sqrt(found.variance_between) * 1e6 == pytest.approx(43, abs=0.5)
    assert sqrt(found.between / 50) * 1e6 == pytest.approx(18, abs=0.5)
    assert found.freedom == (9, 40)


def test_ten_days_of_voltage_come_to_the_figures_that_were_not_rounded() -> None:
    found = ten_days()
    assert float(found.mean) == pytest.approx(10.0000971, abs=1e-12)
    assert sqrt(found.between / 5) * 1e6 == pytest.approx(57.08950088, abs=1e-7)
    assert sqrt(found.within) * 1e6 == pytest.approx(84.88698369, abs=1e-7)
    assert float(found.ratio or 0) == pytest.approx(2.26151927, abs=1e-8)
    assert sqrt(found.variance_between) * 1e6 == pytest.approx(42.63861057, abs=1e-7)
    assert scipy.stats.f.sf(float(found.ratio or 0), *found.freedom) == pytest.approx(0.03739682514, abs=1e-9)
    assert scipy.stats.f.ppf(0.95, *found.freedom) == pytest.approx(2.12, abs=0.005)


def test_twenty_readings_come_to_the_published_mean_and_deviation() -> None:
    found = group_of([Fraction(reading) for reading in TWENTY.split()])
    assert float(found.mean) == 100.145
    assert sqrt(found.variance) == pytest.approx(1.489, abs=5e-4)
    assert sqrt(found.variance / found.count) == pytest.approx(0.333, abs=5e-4)


def test_batches_of_dyestuff_differ_as_published() -> None:
    """Of the readings themselves only the means and the variance within are known here."""
    found = components([Group(5, Fraction(mean), Fraction("2451.25")) for mean in BATCHES])
    assert found.between == Fraction("11271.5")
    assert sqrt(found.variance_between) == pytest.approx(42.0006, abs=1e-4)
    assert sqrt(found.within) == pytest.approx(49.5101, abs=1e-4)
    assert float(found.ratio or 0) == pytest.approx(4.59826619072, abs=1e-10)


def test_what_is_closer_than_it_repeats_is_not_below_nothing() -> None:
    found = Components(Fraction(0), Fraction("8.33632576"), Fraction("14.9458896"), (5, 24), Fraction(5))
    assert float(found.raw_variance_between) == pytest.approx(-1.321912768, abs=1e-9)
    assert found.variance_between == 0
