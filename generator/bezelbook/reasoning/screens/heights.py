"""Heights on one line: open stretches of it, what they leave free, and whether together they leave nothing."""

from collections.abc import Iterable
from dataclasses import dataclass
from fractions import Fraction


@dataclass(frozen=True, slots=True)
class Stretch:
    """Every height strictly between two; empty where the first is not below the second."""

    low: Fraction
    high: Fraction

    @property
    def empty(self) -> bool:
        """Whether it holds no height."""
        return self.low >= self.high


@dataclass(frozen=True, slots=True)
class Window:
    """Every height from one to another, both included."""

    low: Fraction
    high: Fraction


def left_free(window: Window, taken: Iterable[Stretch]) -> tuple[Window, ...]:
    """What open stretches leave of a window, lowest first; a single height counts."""
    free: list[Window] = []
    at = window.low
    for stretch in sorted((one for one in taken if not one.empty), key=lambda one: one.low):
        if at < stretch.high and stretch.low < window.high:
            if at <= stretch.low:
                free.append(Window(at, stretch.low))
            at = stretch.high
    return (*free, Window(at, window.high)) if at <= window.high else tuple(free)
