"""Looks in a few hundred made-up shops in each order, and says how long it took on average."""

from collections import deque
from collections.abc import Iterator, Mapping
from concurrent.futures import ProcessPoolExecutor
from itertools import count, islice

from tests.bench.looking.orders import ORDERS, STOPPED, compared

SHOPS, AT_ONCE, PROCESSES = 200, 4, 2
# What looking has to come to: at most half of the minutes that it takes at random, no more than asked most first takes.
OF_RANDOM, OF_MOST_ASKED = 0.5, 1.0


def looked(seed: str, shops: int = SHOPS) -> Iterator[str]:
    """Look in so many shops in each order, and say how many minutes it took on average, and whether that is enough."""
    found: list[Mapping[str, int]] = []
    tried = 0
    for minutes in _minutes(seed):
        tried += 1
        found += [minutes] if minutes else []
        if len(found) == shops:
            break
    sums = {name: sum(one[name] for one in found) for name in ORDERS}
    of_random, of_read_first, of_most_asked = (
        sums["ours"] / sums[name] for name in ("random", "random, read first", "most asked first")
    )
    holds = of_random <= OF_RANDOM and of_most_asked <= OF_MOST_ASKED
    said = ", ".join(f"{name} {total / shops:.1f}" for name, total in sums.items())
    yield f"looking                 {shops} shops, minutes until half is settled: {said}"
    yield f"                        {tried - shops} more in which nothing is open"
    verdict = "that holds" if holds else "that does not hold"
    yield f"ours of random's        {of_random:.2f}, at most {OF_RANDOM:.2f}: random counts up to {STOPPED} times ours"
    yield f"of most asked first's   {of_most_asked:.2f}, at most {OF_MOST_ASKED:.2f}: {verdict}"
    yield f"of random, read first's {of_read_first:.2f}, for comparison: nothing offered up until all is read"


def _minutes(seed: str) -> Iterator[Mapping[str, int]]:
    """The minutes by order in one shop after another, for ever; a few shops at once, in the same order each time."""
    seeds = (f"{seed}-looks-{number}" for number in count())
    with ProcessPoolExecutor(PROCESSES) as pool:
        ahead = deque(pool.submit(compared, one) for one in islice(seeds, AT_ONCE))
        try:
            while True:
                yield ahead.popleft().result()
                ahead.append(pool.submit(compared, next(seeds)))
        finally:
            pool.shutdown(cancel_futures=True)
