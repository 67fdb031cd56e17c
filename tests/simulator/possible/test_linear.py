"""The oracle's search against trying out every whole number."""

from collections.abc import Hashable
from itertools import product
from random import Random

import pytest

from tests.simulator.possible.linear import Clause, Sum, constant, more_than, number, possible

NAMES = ("a", "b", "c")


def clauses_of(seed: int) -> list[Clause]:
    """Either/ors of differences, whose answer over real numbers is that over whole ones where none is strict."""
    dice = Random(seed)
    ends = [(number(name), constant(4.0) - number(name)) for name in NAMES]
    found: list[Clause] = [(end,) for end in ends]
    for _ in range(dice.randint(2, 7)):
        options = []
        for _ in range(dice.randint(1, 3)):
            one, other = dice.sample(NAMES, 2)
            options.append((number(one) - number(other) - constant(float(dice.randint(-3, 4))),))
        found.append(tuple(options))
    return found


def by_trying(clauses: list[Clause]) -> bool:
    """The same by trying every whole number from 0 to 4."""
    for values in product(range(5), repeat=len(NAMES)):
        at: dict[Hashable, float] = {name: float(value) for name, value in zip(NAMES, values, strict=True)}
        if all(any(all(bound.at(at) >= 0 for bound in option) for option in clause) for clause in clauses):
            return True
    return False


@pytest.mark.parametrize("first", range(0, 300, 100))
def test_it_finds_numbers_exactly_where_trying_finds_some(first: int) -> None:
    cases = [clauses_of(seed) for seed in range(first, first + 100)]
    assert [possible(clauses) for clauses in cases] == [by_trying(clauses) for clauses in cases]
    assert {by_trying(clauses) for clauses in cases} == {True, False}


def test_larger_is_never_only_as_large() -> None:
    exact = (number("a") - constant(165.0), constant(165.0) - number("a"))
    assert possible([(exact,), ((more_than(constant(165.0), number("a")),),)]) is False
    assert possible([(exact,), ((more_than(constant(165.00001), number("a")),),)]) is True


def test_nothing_to_satisfy_is_satisfied() -> None:
    assert possible([]) is True
    assert possible([((Sum({}, -1.0),),)]) is False
    assert possible([((Sum({}, -1.0),), ())]) is True
