"""One grammar serves Python and the browser, and grows only where a form says so."""

import re

import pytest

from bezelbook.values.grammar import Form, form_pattern, reads
from tests.values.forms import FORMS
from tests.values.spoken import SIZES


def test_every_pattern_can_be_compiled() -> None:
    for form in FORMS:
        re.compile(form_pattern(form))


def test_a_form_takes_no_more_than_it_says() -> None:
    assert reads("165 mm", Form("length"))
    assert not reads("165 mm caliper", Form("length"))
    assert not reads("-165 mm", Form("length"))
    assert reads("-165 ± 1 mm caliper", Form("length", signed=True, sized=True))
    assert not reads("165 ± 1 mm", Form("length", plus_minus=False))


def test_minutes_stay_below_an_hour_and_inches_below_a_foot() -> None:
    assert [reads(f"1 h {n}", Form("time")) for n in (0, 59, 60)] == [True, True, False]
    assert [reads(f"1 ft {n} in", Form("length")) for n in (0, 11, 12)] == [True, True, False]


@pytest.mark.parametrize("dimension", sorted(SIZES))
def test_a_long_run_of_one_character_is_refused_at_once(dimension: str) -> None:
    for character in " 0.,/½-±m":
        assert not reads("1" + character * 100_000, Form(dimension, signed=True, sized=True))
