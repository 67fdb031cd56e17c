"""The smallest sets of statements that cannot all be true, enough of them to name every statement that is in any."""

from collections.abc import Callable, Hashable, Sequence
from typing import TypeVar

from bezelbook.reasoning.maximal import contradiction, maximal_consistent

S = TypeVar("S", bound=Hashable)


def cores(statements: Sequence[S], consistent: Callable[[tuple[S, ...]], bool]) -> tuple[tuple[S, ...], ...]:
    """Sets of statements that cannot all be true and would be if any were dropped, in the order of the statements.

    A statement is in some smallest contradiction if and only if some largest consistent set leaves it out (Reiter, "A
    theory of diagnosis from first principles", 1987; from memory); so each one that any leaves out is named once here,
    those first that the fewest need to be dropped with.
    """
    named: set[S] = set()
    found: list[tuple[S, ...]] = []
    for whole in maximal_consistent(statements, consistent):
        for one in statements:
            if one not in whole and one not in named:
                core = _with(one, whole, consistent)
                found.append(tuple(each for each in statements if each in core))
                named |= set(core)
    return tuple(found)


def _with(one: S, whole: tuple[S, ...], consistent: Callable[[tuple[S, ...]], bool]) -> tuple[S, ...]:
    """A smallest contradiction of one statement with a set that it cannot be added to."""
    return contradiction((*whole, one), consistent)
