"""A slip in a number is met with what it most likely meant."""

import pytest

from bezelbook.values.grammar import Form
from bezelbook.values.number_faults import (
    bracketed,
    fraction_fault,
    letter_for_point,
    over_the_top,
    spread_out,
    thousands_comma,
    too_fine,
    two_sizes,
)

LENGTH = Form("length")
PLAIN = Form("length", plus_minus=False)
TIME = Form("time")
MASS = Form("mass")
OHMS = Form("resistance")


@pytest.mark.parametrize(
    ("text", "mend"),
    [
        ("182 x 53 mm", "Write each size in its own field: 182 mm, then 53 mm"),
        ("6x9 in", "Write each size in its own field: 6 in, then 9 in"),
        ("182 mm × 53 mm", "Write each size in its own field: 182 mm, then 53 mm"),
        ("1 by 2 by 3 in", "Write each size in its own field: 1 in, then 2 in, then 3 in"),
        ("182x53", "Write each size in its own field"),
        ("1x2x3x4 mm", "Write each size in its own field: 1 mm, then 2 mm, then 3 mm, then 4 mm"),
    ],
)
def test_sizes_multiplied_are_taken_apart(text: str, mend: str) -> None:
    wrong = two_sizes(text, LENGTH)
    assert wrong
    assert wrong.mend == mend


@pytest.mark.parametrize("text", ["165 mm", "x 5 mm", "box"])
def test_one_size_is_not_two(text: str) -> None:
    assert two_sizes(text, LENGTH) is None


@pytest.mark.parametrize(
    ("text", "mend"),
    [
        ("1,000 mm", "Write 1000 mm or 1.000 mm"),
        ("6,125 in", "Write 6125 in or 6.125 in"),
        ("1,000,000 mm", "Write 1000000 mm"),
        ("1,000", "Write 1000 mm or 1000 in or 1.000 mm or 1.000 in"),
    ],
)
def test_a_comma_before_three_digits_has_two_readings(text: str, mend: str) -> None:
    wrong = thousands_comma(text, LENGTH)
    assert wrong
    assert wrong.mend == mend


@pytest.mark.parametrize("text", ["6,5 mm", "1000 mm", "1,0000 mm"])
def test_other_commas_have_one_reading(text: str) -> None:
    assert thousands_comma(text, LENGTH) is None


@pytest.mark.parametrize(
    ("text", "form", "mend"),
    [
        ("2-3 mm", LENGTH, "Write 2.5 ± 0.5 mm"),
        ("3-2 mm", LENGTH, "Write 2.5 ± 0.5 mm"),
        ("2 to 3 in", LENGTH, "Write 2.5 ± 0.5 in"),
        ("2 mm – 3 mm", LENGTH, "Write 2.5 ± 0.5 mm"),
        ("1/2-3/4 in", LENGTH, "Write 0.625 ± 0.125 in"),
        ("2-3", LENGTH, "Write 2.5 ± 0.5 mm or 2.5 ± 0.5 in"),
        ("2-3 mm", PLAIN, "Write 2 mm or 3 mm"),
        ("5-5 mm", LENGTH, "Write 5 mm"),
    ],
)
def test_a_range_becomes_its_middle_and_a_give(text: str, form: Form, mend: str) -> None:
    wrong = spread_out(text, form)
    assert wrong
    assert wrong.mend == mend


def test_a_single_number_is_no_range() -> None:
    assert spread_out("165 mm", LENGTH) is None


@pytest.mark.parametrize(
    ("text", "form", "mend"),
    [
        ("50(1) mm", LENGTH, "Write 50 ± 1 mm or 50 mm"),
        ("50(1) mm", PLAIN, "Write 50 mm"),
        ("50 (1)", LENGTH, "Write 50 mm or 50 in"),
    ],
)
def test_brackets_stand_for_a_give(text: str, form: Form, mend: str) -> None:
    wrong = bracketed(text, form)
    assert wrong
    assert wrong.mend == mend


def test_no_brackets_no_complaint() -> None:
    assert bracketed("50 mm", LENGTH) is None


@pytest.mark.parametrize(
    ("text", "form", "said"),
    [
        ("1/2 1/4 in", LENGTH, '"1/2 1/4 in" has two fractions. Write 1/2 in or 1/4 in.'),
        ("1/0 in", LENGTH, '"1/0 in" is divided by nothing. Write it like 165 mm or 6 1/2 in.'),
        ("19/8 in", LENGTH, '"19/8 in" has a fraction above one. Write 2 3/8 in.'),
        ('23/8"', LENGTH, '\'23/8"\' has a fraction above one. Write 2 7/8" or 2 3/8".'),
        ("6 5/4 in", LENGTH, '"6 5/4 in" has a fraction above one. Write 7 1/4 in.'),
        ("4/4 in", LENGTH, '"4/4 in" has a fraction above one. Write 1 in.'),
        (
            "1/3 in",
            LENGTH,
            '"1/3 in" has a fraction other than halves, quarters and so on to 64ths. Write 0.3333 in or 21/64 in.',
        ),
        ("1/64 h", TIME, '"1/64 h" has a fraction too fine to keep. Write 0.02 h.'),
    ],
)
def test_a_fraction_that_no_rule_has_is_reworded(text: str, form: Form, said: str) -> None:
    assert str(fraction_fault(text, form)) == said


@pytest.mark.parametrize("text", ["165 mm", "about 19/8 in", "1/2 inn"])
def test_a_sound_fraction_is_not_at_fault(text: str) -> None:
    assert fraction_fault(text, LENGTH) is None


@pytest.mark.parametrize(
    ("text", "mend"),
    [("4R7", "Write 4.7 ohm"), ("4k7", "Write 4.7 kohm"), ("22R", "Write 22 ohm"), ("10K", "Write 10 kohm")],
)
def test_the_letter_printed_on_a_resistor_is_its_point(text: str, mend: str) -> None:
    wrong = letter_for_point(text, OHMS)
    assert wrong
    assert wrong.mend == mend


@pytest.mark.parametrize(("text", "form"), [("4R7", LENGTH), ("4 ohm", OHMS)])
def test_such_letters_mean_nothing_elsewhere(text: str, form: Form) -> None:
    assert letter_for_point(text, form) is None


@pytest.mark.parametrize(
    ("text", "form", "said"),
    [
        ("1:45", TIME, '"1:45" has a colon in it. Write 1 h 45 min.'),
        ("1 h 75", TIME, '"1 h 75" counts past 59 min. Write 2 h 15 min.'),
        ("1 ft 14 in", LENGTH, '"1 ft 14 in" counts past 11 in. Write 2 ft 2 in.'),
    ],
)
def test_small_units_carry_over(text: str, form: Form, said: str) -> None:
    assert str(over_the_top(text, form)) == said


@pytest.mark.parametrize(("text", "form"), [("1:45", MASS), ("95 min", TIME), ("6' 2", LENGTH)])
def test_nothing_carries_over_where_nothing_is_too_much(text: str, form: Form) -> None:
    assert over_the_top(text, form) is None


@pytest.mark.parametrize(
    ("text", "form", "said"),
    [
        ("6.50000 in", LENGTH, '"6.50000 in" has more decimals than can be kept. Write 6.5 in.'),
        ("6.12345 in", LENGTH, '"6.12345 in" has more decimals than can be kept. Write 6.1234 in.'),
        ("0.12345 m", LENGTH, '"0.12345 m" has more decimals than can be kept. Write 123.45 mm.'),
        ("1.125 h", TIME, '"1.125 h" has more decimals than can be kept. Write 67.5 min.'),
        (".12345 mm", LENGTH, '".12345 mm" has more decimals than can be kept. Write 0.1234 mm.'),
        ("12345678 mm", LENGTH, '"12345678 mm" is too large a number. Write it like 165 mm or 6 1/2 in.'),
    ],
)
def test_too_many_digits_are_rounded_or_given_in_another_unit(text: str, form: Form, said: str) -> None:
    assert str(too_fine(text, form)) == said


@pytest.mark.parametrize("text", ["6.12345 furlongs", "mm", "6 1/2 in"])
def test_only_a_number_before_a_known_unit_is_rounded(text: str) -> None:
    assert too_fine(text, LENGTH) is None
