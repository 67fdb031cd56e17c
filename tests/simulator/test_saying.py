"""A reading is always nearer to the truth than its ±, in whichever unit it is said."""

from fractions import Fraction
from random import Random

import pytest

from tests.simulator.box_world import MM
from tests.simulator.saying import in_inches, in_mm, read_off


def nanometres(text: str) -> Fraction:
    """What a text means, by the definition of the inch (25.4 mm exactly, 1959) and nothing else."""
    *numbers, unit = text.split()
    return sum(map(Fraction, numbers), Fraction(0)) * {"mm": MM, "in": 25_400_000}[unit]


@pytest.mark.parametrize("give", [100_000, MM // 2, MM, 5 * MM])
def test_what_is_read_off_is_wrong_by_less_than_its_give_and_sometimes_nearly_by_it(give: int) -> None:
    dice = Random(give)
    errors = []
    for _ in range(2_000):
        true = dice.randint(600, 3000) * MM // 10
        errors.append(abs(nanometres(read_off(dice, true, give)) - true))
    assert max(errors) < give
    assert max(errors) > give * 9 // 10


def test_without_a_give_it_is_said_exactly() -> None:
    dice = Random(1)
    assert all(nanometres(read_off(dice, true, 0)) == true for true in range(100 * MM, 101 * MM, 100_000))


def test_lengths_are_said_as_people_write_them() -> None:
    assert (in_mm(165_500_000), in_mm(-3 * MM), in_mm(100)) == ("165.5 mm", "-3 mm", "0.0001 mm")
    assert (in_inches(165_100_000), in_inches(12_700_000), in_inches(25_400_000)) == ("6 1/2 in", "1/2 in", "1 in")
