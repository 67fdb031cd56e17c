"""The largest sets of statements that can all be true together."""

# Every minimal contradiction is found by dropping statements one at a time, and the sets are grown from the ways to
# break all of them: the hitting-set tree of Reiter, "A theory of diagnosis from first principles" (1987; from memory).

from collections import deque
from collections.abc import Callable, Hashable, Sequence
from typing import TypeVar

MOST_SETS = 24
S = TypeVar("S", bound=Hashable)


def maximal_consistent(
    statements: Sequence[S], consistent: Callable[[tuple[S, ...]], bool]
) -> tuple[tuple[S, ...], ...]:
    """Every set of statements, in their own order, that is consistent and cannot be added to; at most `MOST_SETS`.

    `consistent` must hold of every part of a consistent set. The sets that leave out fewest come first.
    """
    left_out: list[frozenset[S]] = []
    waiting = deque([frozenset[S]()])
    seen: set[frozenset[S]] = set()
    while waiting and len(left_out) < MOST_SETS:
        out = waiting.popleft()
        if out in seen or any(found <= out for found in left_out):
            continue
        seen.add(out)
        kept = tuple(one for one in statements if one not in out)
        if consistent(kept):
            left_out.append(out)
        else:
            waiting.extend(out | {one} for one in contradiction(kept, consistent))
    return tuple(tuple(one for one in statements if one not in out) for out in left_out)


def contradiction(statements: Sequence[S], consistent: Callable[[tuple[S, ...]], bool]) -> tuple[S, ...]:
    """One smallest part of an inconsistent set that is inconsistent by itself: drop any of it and it is not."""
    core = tuple(statements)
    for one in statements:
        fewer = tuple(other for other in core if other != one)
        if not consistent(fewer):
            core = fewer
    return core
