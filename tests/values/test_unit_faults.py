"""A slip in a unit is met with what it most likely meant."""

import pytest

from bezelbook.values.grammar import Form
from bezelbook.values.unit_faults import (
    doubtful_unit,
    fahrenheit,
    no_number,
    number_after_unit,
    unit_first,
    unit_of_another,
    unit_twice,
    unknown_unit,
)

LENGTH = Form("length")
MASS = Form("mass")


@pytest.mark.parametrize("text", ["mm", "nan mm", "looks roomy"])
def test_a_quantity_has_a_number(text: str) -> None:
    assert str(no_number(text, LENGTH)) == f'"{text}" has no number. Write it like 165 mm or 6 1/2 in.'


@pytest.mark.parametrize("text", ["5", "½ in"])
def test_a_digit_or_a_half_is_a_number(text: str) -> None:
    assert no_number(text, LENGTH) is None


def test_one_unit_is_enough() -> None:
    assert str(unit_twice("5 mm mm", LENGTH)) == '"5 mm mm" has more than one unit. Write 5 mm.'
    assert str(unit_twice("5 mm in", LENGTH)) == '"5 mm in" has more than one unit. Write 5 mm or 5 in.'


@pytest.mark.parametrize("text", ["5 mm", "5 mm deep", "mm"])
def test_one_unit_is_not_two(text: str) -> None:
    assert unit_twice(text, LENGTH) is None


@pytest.mark.parametrize(
    ("text", "mend"),
    [
        ("6in 1/2", "Write 6 1/2 in"),
        ('6" 1/2', 'Write 6 1/2"'),
        ("6' 2", "Write 6' 2 in"),
        ("5 inches 3", "Write 5 inches or 3 inches"),
        ("5 mm 3 in", "Write 5 mm or 3 in"),
    ],
)
def test_a_number_belongs_before_its_unit(text: str, mend: str) -> None:
    wrong = number_after_unit(text, LENGTH)
    assert wrong
    assert wrong.mend == mend


def test_two_numbers_are_also_parted_where_no_unit_pairs_with_another() -> None:
    wrong = number_after_unit("5 kg 300", MASS)
    assert wrong
    assert wrong.mend == "Write 5 kg or 300 kg"


@pytest.mark.parametrize("text", ["5 mm", "5 of 3"])
def test_numbers_in_order_are_left_alone(text: str) -> None:
    assert number_after_unit(text, LENGTH) is None


def test_a_unit_in_front_moves_behind() -> None:
    assert str(unit_first("mm 165", LENGTH)) == '"mm 165" has its unit in front. Write 165 mm.'


@pytest.mark.parametrize("text", ["165 mm", "M 5"])
def test_other_words_in_front_are_left_to_others(text: str) -> None:
    assert unit_first(text, LENGTH) is None


@pytest.mark.parametrize(
    ("text", "mend"),
    [
        ("80 mil", "Write 0.08 in or 80 mm"),
        ("5 thou", "Write 0.005 in"),
        ("10 M", "Write 10 m or 10 mm"),
    ],
)
def test_a_unit_with_two_meanings_gives_both(text: str, mend: str) -> None:
    wrong = doubtful_unit(text, LENGTH)
    assert wrong
    assert wrong.mend == mend


@pytest.mark.parametrize(("text", "form"), [("80 mil", MASS), ("80 mm", LENGTH)])
def test_a_plain_unit_has_one_meaning(text: str, form: Form) -> None:
    assert doubtful_unit(text, form) is None


def test_a_unit_of_something_else_says_of_what() -> None:
    wrong = unit_of_another("20 ohm", LENGTH)
    assert str(wrong) == '"20 ohm" is a resistance, and a length belongs here. Write it like 165 mm or 6 1/2 in.'


@pytest.mark.parametrize("text", ["20 mm", "20 pt", "20"])
def test_a_unit_of_nothing_is_of_nothing_else(text: str) -> None:
    assert unit_of_another(text, LENGTH) is None


@pytest.mark.parametrize(
    ("text", "mend"),
    [
        ("5 nm", "Write 5 mm or 5 cm"),
        ("165 mn", "Write 165 mm or 165 in"),
        ("6 inchs", "Write 6 inches"),
        ("4 AWG", "Write it in mm, in, cm, m or ft"),
    ],
)
def test_a_misspelt_unit_is_mended_where_one_is_near(text: str, mend: str) -> None:
    wrong = unknown_unit(text, LENGTH)
    assert wrong
    assert wrong.mend == mend


def test_an_unknown_unit_of_one_choice_names_it() -> None:
    wrong = unknown_unit("15 furlongs", Form("angle"))
    assert wrong
    assert wrong.mend == "Write it in deg"


@pytest.mark.parametrize("text", ["5 mm", "5"])
def test_a_known_unit_is_not_unknown(text: str) -> None:
    assert unknown_unit(text, LENGTH) is None


@pytest.mark.parametrize(
    ("text", "mend"),
    [
        ("212 °F", "Write 100 °C"),
        ("175F", "Write 79.4 °C"),
        ("32 fahrenheit", "Write 0 °C"),
        ("-40 °F", "Write -40 °C"),
    ],
)
def test_fahrenheit_is_met_with_the_same_warmth_in_celsius(text: str, mend: str) -> None:
    wrong = fahrenheit(text, Form("temperature", signed=True))
    assert wrong
    assert wrong.mend == mend


def test_only_a_temperature_is_ever_in_fahrenheit() -> None:
    assert fahrenheit("20 F", Form("capacitance")) is None
    assert fahrenheit("70 °C", Form("temperature")) is None
