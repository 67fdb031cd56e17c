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


# IEC 60063: from memory, 15, 18 and 22 follow each other in E12, 47 and 100 in E3.
def test_the_nearer_of_the_two_beside_it_is_taken() -> None:
    wanted = ((Fraction(17), "E12"), (Fraction(16), "E12"), (Fraction(80), "E3"), (Fraction(22), "E12"))
    assert [nearest(value, named) for value, named in wanted] == [18, 15, 100, 22]  # type: ignore[arg-type]
