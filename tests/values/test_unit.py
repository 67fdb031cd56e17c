"""Every unit is known by its spellings, and holds an exact number of base units."""

import re

import pytest

from bezelbook.values.unit import PAIRS, UNITS, literal, spellings, unit_named, unit_pattern
from tests.values.spoken import SIZES


@pytest.mark.parametrize("dimension", sorted(SIZES))
def test_units_have_the_sizes_that_the_standards_give_them(dimension: str) -> None:
    for name, size in SIZES[dimension].items():
        unit = unit_named(name, dimension)
        assert unit
        assert unit.size == size


def test_the_dimensions_are_those_of_the_trade() -> None:
    assert UNITS.keys() == SIZES.keys()


@pytest.mark.parametrize(
    ("text", "dimension", "name"),
    [
        ("MM", "length", "mm"),
        ("m", "length", "m"),
        ("M", "length", None),
        ("mA", "current", "mA"),
        ("MA", "current", None),
    ],
)
def test_capitals_count_only_where_they_change_the_meaning(text: str, dimension: str, name: str | None) -> None:
    unit = unit_named(text, dimension)
    assert (unit.name if unit else None) == name


def test_no_spelling_stands_for_two_units_of_one_dimension() -> None:
    for dimension, units in UNITS.items():
        written = [text for unit in units for text in (*unit.words, *unit.marks)]
        assert len(written) == len(set(written)) == len(spellings(dimension))


@pytest.mark.parametrize("dimension", sorted(SIZES))
def test_the_pattern_matches_the_spellings_and_nothing_else(dimension: str) -> None:
    expression = re.compile(unit_pattern(UNITS[dimension]))
    assert all(expression.fullmatch(text) for text in spellings(dimension))
    assert all(expression.fullmatch(name) for name in SIZES[dimension])
    assert not expression.fullmatch("furlong")


def test_numbers_stay_whole_in_base_units() -> None:
    for units in UNITS.values():
        for unit in units:
            assert unit.size % 10**unit.decimals == 0
            assert unit.decimals == 4 or unit.size % 10 ** (unit.decimals + 1)
            assert all(unit.size % under == 0 for under in unit.denominators)


def test_a_64th_of_an_inch_is_whole() -> None:
    inch = unit_named("in", "length")
    assert inch
    assert 64 in inch.denominators


def test_a_pair_counts_to_its_big_unit() -> None:
    assert all(pair.small.size * pair.below == pair.big.size for pair in PAIRS.values())


def test_syntax_is_escaped_and_nothing_else() -> None:
    assert literal("a.b*/°µ-\"'") == "a\\.b\\*\\/°µ-\"'"
