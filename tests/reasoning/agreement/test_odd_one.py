from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st
from scipy.stats import chi2

from bezelbook.reasoning.agreement.consensus import Figure, consensus
from bezelbook.reasoning.agreement.odd_one import agree, agreement

gives = st.integers(1, 9).map(Fraction)
figures = st.lists(st.builds(Figure, st.integers(0, 60).map(Fraction), gives), min_size=2, max_size=6)


def found(*readings: tuple[int, int]) -> list[Figure]:
    return [Figure(Fraction(value), Fraction(give)) for value, give in readings]


def test_four_agree_and_one_stands_apart() -> None:
    said = agreement(found((205, 2), (204, 2), (206, 3), (205, 3), (188, 3)))
    assert (said.agree, said.odd) == (False, 4)
    assert said.consensus == consensus(found((205, 2), (204, 2), (206, 3), (205, 3)))
    assert said.strains[4] > 1
    assert said.chance < Fraction(1, 20)
    assert said.birge_squared < 1


def test_those_that_agree_come_to_their_weighted_mean() -> None:
    said = agreement(found((205, 2), (204, 2)))
    assert said.agree
    assert said.odd is None
    assert said.consensus == consensus(found((205, 2), (204, 2)))


def test_of_two_that_do_not_agree_neither_is_singled_out() -> None:
    said = agreement(found((205, 2), (188, 2)))
    assert (said.agree, said.odd) == (False, None)
    assert said.consensus.give > consensus(found((205, 2), (188, 2))).give


def test_two_against_two_single_nobody_out() -> None:
    assert agreement(found((205, 2), (205, 2), (188, 2), (188, 2))).odd is None


def test_the_limit_of_e_n_is_still_agreement() -> None:
    assert agree(found((205, 3), (200, 4)))
    assert not agree(found((206, 3), (200, 4)))


def test_many_that_scatter_too_wide_do_not_agree_though_each_pair_may() -> None:
    """By hand: each is 9.6 from the mean of the rest, and the chi-square of five degrees, 15.36, is above 11.07."""
    wide = found((200, 10), (200, 10), (200, 10), (216, 10), (216, 10), (216, 10))
    assert all(strain <= 1 for strain in agreement(wide).strains)
    assert not agree(wide)


def test_two_pairs_apart_agree_up_to_the_limit_of_three_degrees() -> None:
    """A chi-square of three degrees is above 7.815 in one case of twenty (NIST/SEMATECH e-Handbook, 1.3.6.7.4).

    By hand: two pairs d apart with a ± of 100 come to 16 (d / 200)²: 7.62 for 138, 9 for 150.
    """
    near, far = (found((0, 100), (0, 100), (d, 100), (d, 100)) for d in (138, 150))
    assert agree(near)
    assert all(strain < 1 for strain in agreement(far).strains)
    assert not agree(far)
    assert abs(float(agreement(far).chance) - chi2.sf(9, 3)) < 1e-9


def test_those_that_agree_show_how_close_each_is_to_the_limit() -> None:
    """By hand: 3 of a squared ± of 25, so that each is (3 / 5)² from the other."""
    assert agreement(found((203, 3), (200, 4))).strains == (Fraction(9, 25), Fraction(9, 25))


@given(figures)
def test_the_order_in_which_they_were_read_does_not_matter(some: list[Figure]) -> None:
    said, turned = agreement(some), agreement(some[::-1])
    assert (said.agree, said.consensus) == (turned.agree, turned.consensus)
    assert said.odd is None or turned.odd == len(some) - 1 - said.odd


@given(figures)
def test_the_odd_one_is_one_without_which_the_rest_agree(some: list[Figure]) -> None:
    said = agreement(some)
    assert said.agree == agree(some)
    if said.odd is not None:
        assert not said.agree
        assert agree(some[: said.odd] + some[said.odd + 1 :])


@given(figures, st.integers(1, 30))
def test_those_that_agree_still_agree_when_each_is_less_sure(some: list[Figure], more: int) -> None:
    if agree(some):
        assert agree([Figure(one.value, one.give * more) for one in some])


def test_three_that_scatter_too_wide_do_not_agree_though_each_is_near_enough_to_the_rest() -> None:
    """Two are 1.35 apart with a ± of 1, the third is 95 away with a ± of 100: a chi-square of 7.26, above 5.99."""
    some = [Figure(Fraction(value), Fraction(give)) for value, give in (("-0.675", "1"), ("0.675", "1"), ("95", "100"))]
    said = agreement(some)
    assert all(strain <= 1 for strain in said.strains)
    assert chi2.sf(7.25, 2) < 0.05
    assert not said.agree


def test_those_that_agree_say_how_often_they_would_scatter_as_wide() -> None:
    """By hand: 3 apart with standard deviations of 1.5 and 2 is a chi-square of 9 / 6.25."""
    said = agreement(found((203, 3), (200, 4)))
    assert said.agree
    assert abs(float(said.chance) - chi2.sf(9 / 6.25, 1)) < 1e-9
