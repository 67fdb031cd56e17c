"""Spans against every value they hold, in whole steps."""

from itertools import product

import pytest

from bezelbook.values.quantity import read_quantity
from bezelbook.values.span import BLANK, NOTHING, UNKNOWN, Span, around, span_of

# Far more than any end of the spans below, so that it stands for everything beyond.
FAR = 40
SPANS = [
    Span(3, 3),
    Span(0, 0),
    Span(2, 6),
    Span(4, 9),
    Span(-3, 1),
    Span(5, None),
    Span(None, 4),
    Span(3, None, reached=True),
    UNKNOWN,
    BLANK,
]
BOUNDED = [span for span in SPANS if span.known]
pairs = pytest.mark.parametrize(("one", "other"), list(product(SPANS, repeat=2)))


def held(span: Span, value: float) -> bool:
    """Whether a span holds a value, by what its docstring says."""
    if span.exact:
        return value == span.low
    above = span.low is None or span.low < value or (span.reached and span.low == value)
    return above and (span.high is None or value < span.high)


def values(span: Span) -> list[float]:
    """What a span holds, in quarter steps; the far values stand for no end at all."""
    return [quarter / 4 for quarter in range(-4 * FAR, 4 * FAR + 1) if held(span, quarter / 4)]


def ends(found: list[float]) -> tuple[float | None, float | None]:
    """The least and the most of what was found, None where it goes on for ever."""
    return (None if min(found) <= -FAR / 2 else min(found)), (None if max(found) >= FAR / 2 else max(found))


def ends_of(span: Span) -> tuple[float | None, float | None]:
    """The least and the most quarter step that a span holds."""
    low = None if span.low is None else span.low + (0 if span.closed else 0.25)
    return low, None if span.high is None else span.high - (0 if span.exact else 0.25)


@pytest.mark.parametrize(("one", "other"), list(product(BOUNDED, repeat=2)))
def test_a_sum_and_a_difference_hold_what_their_parts_can_make_and_no_more(one: Span, other: Span) -> None:
    # Quarter steps lose a step at each open end that takes part, so only the bare ends are compared.
    plus = [a + b for a, b in product(values(one), values(other))]
    minus = [a - b for a, b in product(values(one), values(other))]
    assert all(held(one.plus(other), value) for value in plus)
    assert all(held(one.minus(other), value) for value in minus)
    assert (one.plus(other).low, one.plus(other).high) == (_low(one) + _low(other), _high(one) + _high(other))
    assert (one.minus(other).low, one.minus(other).high) == (_low(one) - _high(other), _high(one) - _low(other))


def _low(span: Span) -> int:
    assert span.low is not None
    return span.low


def _high(span: Span) -> int:
    assert span.high is not None
    return span.high


@pairs
def test_the_larger_of_two_holds_exactly_what_can_be_the_larger(one: Span, other: Span) -> None:
    larger = [max(a, b) for a, b in product(values(one), values(other))]
    assert ends_of(one.at_least(other)) == ends(larger)


@pairs
def test_an_end_that_nothing_bounds_stays_unbounded_in_a_sum(one: Span, other: Span) -> None:
    assert (one.plus(other).low is None) == (one.low is None or other.low is None)
    assert (one.plus(other).high is None) == (one.high is None or other.high is None)
    assert (one.minus(other).low is None) == (one.low is None or other.high is None)
    assert (one.minus(other).high is None) == (one.high is None or other.low is None)


def test_a_low_end_is_inside_a_sum_only_if_it_is_inside_both() -> None:
    reached = Span(3, None, reached=True)
    assert [reached.plus(other).closed for other in (Span(1, 1), BLANK, Span(1, 5), Span(1, None))] == [
        True,
        True,
        False,
        False,
    ]
    assert [reached.minus(other).closed for other in (Span(1, 1), Span(1, 5), BLANK)] == [True, False, False]


def test_a_stated_plus_minus_is_an_error_strictly_smaller_than_it() -> None:
    span = around(150, 3)
    assert (held(span, 147), held(span, 147.25), held(span, 152.75), held(span, 153)) == (False, True, True, False)
    assert around(150, 0) == Span(150, 150)
    assert around(150, 0).exact


def test_a_length_has_its_own_plus_minus_before_that_of_the_house() -> None:
    rough, bare = read_quantity("150 ± 3 mm", "length"), read_quantity("150 mm", "length")
    assert span_of(rough, 5_000_000) == Span(147_000_000, 153_000_000)
    assert span_of(bare, 5_000_000) == Span(145_000_000, 155_000_000)
    assert span_of(bare, None) == Span(150_000_000, 150_000_000)


def test_a_blank_size_is_at_least_nothing_and_nothing_is_known_of_it() -> None:
    assert held(BLANK, 0)
    assert not held(BLANK, -0.25)
    assert (BLANK.known, UNKNOWN.known, NOTHING.known, NOTHING.exact) == (False, False, True, True)
