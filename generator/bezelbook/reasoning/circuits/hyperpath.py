"""The least value of everything that can be reached, where a thing may need several others before it is reached."""

from collections.abc import Callable, Hashable, Iterable, Mapping
from dataclasses import dataclass
from heapq import heapify, heappop, heappush
from typing import Any, Generic, TypeVar

N = TypeVar("N", bound=Hashable)


@dataclass(frozen=True)
class Arc(Generic[N]):
    """A way to reach `head` once all of `tails` are reached.

    `value` makes of the tails' values, in their order, that of the head. It must be superior: it never falls when one
    of them rises, and is never below the largest of them.
    """

    head: N
    tails: tuple[N, ...]
    value: Callable[..., Any]


def least_values(arcs: Iterable[Arc[N]]) -> Mapping[N, Any]:
    """The least value of each node that can be reached, in the order in which they are settled.

    Source: D. E. Knuth, A generalization of Dijkstra's algorithm, Information Processing Letters 6 (1977) 1-5.
    """
    every = list(arcs)
    waiting = [len(set(arc.tails)) for arc in every]
    behind: dict[N, list[int]] = {}
    for number, arc in enumerate(every):
        for tail in dict.fromkeys(arc.tails):
            behind.setdefault(tail, []).append(number)
    queue: list[tuple[Any, int]] = [(arc.value(), number) for number, arc in enumerate(every) if not arc.tails]
    heapify(queue)
    settled: dict[N, Any] = {}
    while queue:
        value, number = heappop(queue)
        head = every[number].head
        if head in settled:
            continue
        settled[head] = value
        for later in behind.get(head, ()):
            waiting[later] -= 1
            if not waiting[later]:
                arc = every[later]
                heappush(queue, (arc.value(*(settled[tail] for tail in arc.tails)), later))
    return settled
