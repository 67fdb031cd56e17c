"""Made-up systems of bounds, and every way to satisfy one, found by trying."""

from collections.abc import Mapping, Sequence
from itertools import product

from hypothesis import strategies as st

from bezelbook.reasoning.bounds import Case, Constraint, Either, OneOf, Rise, Under, numbers_of

NUMBERS = ("a", "b", "c")
# No least value exceeds three steps of 3, the most that anything made up here lifts at once.
TOP = 9
Values = Mapping[str | None, int]

numbers = st.sampled_from(NUMBERS)
grounds = st.sampled_from((*NUMBERS, None))
steps = st.integers(-3, 3)
rises = st.builds(Rise, numbers, grounds, steps)
unders = st.builds(Under, numbers, grounds, st.integers(-2, 5))
eithers = st.builds(Either, st.lists(unders, min_size=1, max_size=3).map(tuple))
cases = st.builds(Case, st.lists(rises, max_size=2).map(tuple), st.lists(eithers, max_size=2).map(tuple))
choices = st.builds(OneOf, st.lists(cases, min_size=1, max_size=3).map(tuple))
systems = st.lists(rises | eithers | choices, max_size=6)


def holds(constraint: Constraint, values: Values) -> bool:
    """Whether these values satisfy a constraint, by what its docstring says."""
    if isinstance(constraint, Rise):
        return values[str(constraint.over)] >= _at(constraint.under, values) + constraint.by
    if isinstance(constraint, Either):
        return any(values[str(one.cell)] < _at(one.need, values) + one.by for one in constraint.options)
    return any(all(holds(one, values) for one in _all_of(case)) for case in constraint.cases)


def _all_of(case: Case) -> tuple[Constraint, ...]:
    return (*case.rises, *case.eithers)


def _at(number: object, values: Values) -> int:
    return 0 if number is None else values[str(number)]


def solutions(system: Sequence[Constraint]) -> list[Values]:
    """Every solution in whole numbers from nothing up to the top."""
    assert set(numbers_of(system)) <= {*NUMBERS, None}
    ways: list[Values] = [dict(zip(NUMBERS, way, strict=True)) for way in product(range(TOP + 1), repeat=len(NUMBERS))]
    return [way for way in ways if all(holds(constraint, way) for constraint in system)]
