from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from bezelbook.reasoning.electric.preferred import Series, nearest, no_less, no_more

values = st.fractions(Fraction(1, 1000), 10**6, max_denominator=1000).filter(lambda value: value > 0)
series = st.sampled_from(("E3", "E6", "E12", "E24"))


@given(values, series)
def test_the_wanted_value_lies_between_its_neighbours_and_they_are_neighbours(wanted: Fraction, named: Series) -> None:
    below, above = no_more(wanted, named), no_less(wanted, named)
    assert below <= wanted <= above
    assert no_less(below, named) == below
    assert no_more(above, named) == above
    assert nearest(wanted, named) in (below, above)
    between = (below + above) / 2
    assert below == above or (no_less(between, named), no_more(between, named)) == (above, below)


@given(values, series)
def test_ten_times_as_much_is_ten_times_the_value(wanted: Fraction, named: Series) -> None:
    assert no_less(10 * wanted, named) == 10 * no_less(wanted, named)


def test_of_two_as_near_the_smaller_is_taken() -> None:
    assert nearest(Fraction(11, 10), "E12") == 1
