from fractions import Fraction

from bezelbook.reasoning.order.clocked import Clocked, clocked
from tests.reasoning.order.trim import seen


def test_minutes_of_the_trade_are_their_median_with_range_and_number() -> None:
    # Trade 4.11: 80, 95 and 110 minutes are about 1 h 35.
    times = [(minutes * 60, seen(f"n{minutes}")) for minutes in (110, 80, 95)]
    assert clocked(times) == Clocked(Fraction(95 * 60), 80 * 60, 110 * 60, 3)
    assert not Clocked(Fraction(1), 1, 1, 3).thin


def test_of_two_it_is_the_middle_and_thin() -> None:
    found = clocked([(60, seen("a")), (121, seen("b"))])
    assert found == Clocked(Fraction(181, 2), 60, 121, 2)
    assert found.thin


def test_a_job_that_was_written_down_twice_counts_once() -> None:
    found = clocked([(60, seen("a", job="blue")), (60, seen("b", job="blue")), (90, seen("c"))])
    assert found == Clocked(Fraction(75), 60, 90, 2)
    copied = [(60, seen(name, author="rk", date="2026-01-01")) for name in ("a", "b")]
    assert clocked([*copied, (90, seen("c", author="rk", date="2026-01-02"))]) == found


def test_of_many_it_is_the_one_in_the_middle_or_between_the_two() -> None:
    four = [(seconds, seen(f"n{seconds}")) for seconds in (200, 20, 90, 80)]
    assert clocked(four) == Clocked(Fraction(85), 20, 200, 4)
    assert clocked([*four, (81, seen("e"))]) == Clocked(Fraction(81), 20, 200, 5)


def test_nobody_with_a_clock_is_no_time() -> None:
    assert clocked([]) is None
