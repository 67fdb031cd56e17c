from fractions import Fraction

from bezelbook.reasoning.order.clocked import Clocked, clocked, job_of
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
    assert found is not None
    assert found.jobs == 2


def test_nobody_with_a_clock_is_no_time() -> None:
    assert clocked([]) is None


def test_independent_jobs_differ_in_tag_or_in_who_and_when() -> None:
    assert job_of(seen("a", job="x")) == job_of(seen("b", job="x"))
    assert job_of(seen("a", date="2026-01-01")) != job_of(seen("a", date="2026-01-02"))
