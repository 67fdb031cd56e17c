"""How many clips to order agrees with published figures and with an independent library.

`predictive_spares.csv`: quantiles, means and chances of the beta-binomial distribution, computed with scipy 1.17.1; the
columns for a uniform prior, the plug-in estimate and the two-stage bound are other methods, of which the plug-in is the
mistake to be told from. `binomial_intervals.csv`: intervals for a share, computed with statsmodels 0.15.0 and scipy; of
them the Jeffreys ones are the limit of our counts, as more and more come off (Brown, Cai and DasGupta, Statistical
Science 16, 2001).
"""

import csv
from fractions import Fraction
from pathlib import Path

import pytest
import scipy.stats
from hypothesis import given
from hypothesis import strategies as st

from bezelbook.reasoning.counts.order_quantity import order_quantity

DATA = Path(__file__).parent / "data"
FINE = 10**10
# A thousand still leave a spread of their own; the bound is what is left of ever more.
SPREAD = 0.006


def rows(name: str) -> list[dict[str, str]]:
    with (DATA / f"{name}.csv").open(encoding="utf-8", newline="") as lines:
        return list(csv.DictReader(lines))


def counts(row: dict[str, str]) -> tuple[int, int, int]:
    return int(row["x_broken"]), int(row["n_removed"]), int(row["m_next"])


SPARES = rows("predictive_spares")
by_row = pytest.mark.parametrize("row", SPARES, ids=lambda row: "{} of {}, then {}".format(*counts(row)))


@by_row
def test_the_number_to_order_is_the_published_quantile(row: dict[str, str]) -> None:
    for level in (90, 95, 99):
        expected = int(row[f"order_q{level}_jeffreys"])
        assert order_quantity(*counts(row), Fraction(level, 100)) == expected
    assert order_quantity(*counts(row)) == int(row["order_q95_jeffreys"])


@by_row
def test_the_chance_of_losing_none_is_the_published_one(row: dict[str, str]) -> None:
    none = Fraction(row["p_zero_jeffreys"])
    assert order_quantity(*counts(row), none - Fraction(1, FINE)) == 0
    assert order_quantity(*counts(row), none + Fraction(1, FINE)) > 0


@by_row
def test_the_mean_is_the_published_one(row: dict[str, str]) -> None:
    lost, handled, coming = counts(row)
    more = sum(1 - chance_of_no_more_than(count, (lost, handled, coming)) for count in range(coming))
    assert float(more) == pytest.approx(float(row["mean_jeffreys"]), abs=2e-8)


def chance_of_no_more_than(count: int, case: tuple[int, int, int]) -> Fraction:
    """The chance, found by asking at which level the number to order passes the count."""
    low, high = 0, FINE
    while low < high:
        middle = (low + high + 1) // 2
        low, high = (middle, high) if order_quantity(*case, Fraction(middle, FINE)) <= count else (low, middle - 1)
    return Fraction(low, FINE)


def test_nothing_lost_so_far_is_no_promise() -> None:
    naive = [row for row in SPARES if row["x_broken"] == "0" and row["order_q95_plugin_naive"] == "0"]
    found = [order_quantity(*counts(row)) for row in naive if int(row["n_removed"]) <= 50]
    assert len(found) == 3
    assert min(found) > 0


@pytest.mark.parametrize("row", rows("binomial_intervals"), ids=lambda row: f"{row['x']} of {row['n']} {row['conf']}")
def test_of_very_many_the_share_to_order_is_the_published_bound(row: dict[str, str]) -> None:
    many = 1000
    case = (int(row["x"]), int(row["n"]), many)
    level = Fraction(row["conf"])
    upper = order_quantity(*case, level)
    assert Fraction(upper, many) == pytest.approx(float(row["jeffreys_one_sided_upper"]), abs=SPREAD)
    both = order_quantity(*case, (1 + level) / 2)
    assert Fraction(both, many) == pytest.approx(float(row["jeffreys_hi"]), abs=SPREAD)
    low = order_quantity(*case, (1 - level) / 2)
    assert Fraction(low, many) == pytest.approx(float(row["jeffreys_lo"]), abs=SPREAD)


@given(st.integers(0, 200).flatmap(lambda n: st.tuples(st.integers(0, n), st.just(n))), st.integers(0, 120))
def test_it_is_the_quantile_that_another_library_gives(past: tuple[int, int], coming: int) -> None:
    lost, handled = past
    distribution = scipy.stats.betabinom(coming, lost + 0.5, handled - lost + 0.5)
    ours = order_quantity(lost, handled, coming)
    # The library sums with floating point, so that a level which falls on a step may go either way there.
    assert distribution.cdf(ours) >= 0.95 - 1e-9
    assert ours == 0 or distribution.cdf(ours - 1) < 0.95 + 1e-9
