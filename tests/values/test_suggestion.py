"""What is proposed in place of a text can itself be read."""

from fractions import Fraction

import pytest

from bezelbook.values.grammar import Form, reads
from bezelbook.values.suggestion import (
    called,
    decimal,
    examples,
    examples_of,
    mixed,
    quoted,
    readable,
    units_in_words,
    with_units,
    write,
)
from tests.values.spoken import SIZES

LENGTH = Form("length")


@pytest.mark.parametrize("dimension", sorted(SIZES))
def test_every_example_can_be_read(dimension: str) -> None:
    assert all(reads(example, Form(dimension)) for example in examples(dimension).split(" or "))


def test_dimensions_have_their_article() -> None:
    assert [called(name) for name in ("length", "angle")] == ["a length", "an angle"]


def test_a_quote_is_cut_short_and_keeps_clear_of_inch_marks() -> None:
    assert quoted("165") == '"165"'
    assert quoted('6"') == "'6\"'"
    assert quoted("x" * 61) == f'"{"x" * 57}..."'


def test_units_are_listed_as_people_do() -> None:
    assert units_in_words("length") == "mm, in, cm, m or ft"
    assert units_in_words("angle") == "deg"


def test_only_what_can_be_read_is_proposed_and_each_once() -> None:
    assert readable(LENGTH, "5 mm", "5", "5 mm") == ["5 mm"]
    assert write(LENGTH, "5 mm", "5", "5 in") == "Write 5 mm or 5 in"
    assert write(LENGTH, "5") == "Write it like 165 mm or 6 1/2 in"


def test_a_number_gets_the_two_usual_units() -> None:
    assert with_units(LENGTH, "5") == ["5 mm", "5 in"]
    assert with_units(Form("angle"), "5") == ["5 deg"]
    assert with_units(LENGTH, "five") == []


@pytest.mark.parametrize(
    ("value", "places", "shown"),
    [(Fraction(5, 2), 4, "2.5"), (Fraction(3), 4, "3"), (Fraction(1, 3), 4, "0.3333"), (Fraction(5, 2), 0, "2")],
)
def test_a_decimal_has_no_idle_zeros(value: Fraction, places: int, shown: str) -> None:
    assert decimal(value, places) == shown


@pytest.mark.parametrize(
    ("value", "shown"), [(Fraction(19, 8), "2 3/8"), (Fraction(3, 8), "3/8"), (Fraction(2), "2"), (Fraction(0), "0")]
)
def test_a_mixed_number_leaves_out_what_is_nothing(value: Fraction, shown: str) -> None:
    assert mixed(value) == shown


def test_the_examples_of_a_form_are_all_read_by_it() -> None:
    assert examples_of(Form("length", sized=True)) == ("165 mm", "6 1/2 in", "150 ± 3 mm", "96 mm caliper")
    assert examples_of(Form("length")) == ("165 mm", "6 1/2 in", "150 ± 3 mm")
    assert examples_of(Form("length", plus_minus=False)) == ("165 mm", "6 1/2 in")
    assert examples_of(Form("time", plus_minus=False)) == ("95 min", "1 h 35")
