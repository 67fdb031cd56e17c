"""Made-up shops that write nothing false: how many firm answers their books give, and how many of those are wrong."""

from collections import Counter as Tally
from collections.abc import Iterator

from tests.simulator.counter import FIRM, Wrong, make, tried_out
from tests.simulator.regimes import HONEST
from tests.simulator.shrinking import shrunk, told

WANTED = 100_000
# Made-up bodies for each opening, beside the published questions; each so-many-th question is answered in full as well.
NEAR, WHOLE = 400, 2_000
NOTES = (30, 40, 50, 60, 75)
SHOWN = 3


def lived_through(seed: str, wanted: int = WANTED) -> Iterator[str]:
    """Open one made-up shop after another until there are enough firm answers, and say what came of it."""
    tally: Tally[str] = Tally()
    wrong: list[Wrong] = []
    shops = 0
    while tally["goes in"] + tally["does not"] < wanted:
        made = make(f"{seed}-{shops}", HONEST, NOTES[shops % len(NOTES)])
        found, faults = tried_out(made, NEAR, WHOLE)
        tally += found
        wrong += faults
        shops += 1
    firm = sum(tally[verdict] for verdict in FIRM)
    counts = ", ".join(f"{count:,} {verdict}" for verdict, count in tally.most_common())
    yield f"honest shops            {shops} of them, {tally.total():,} questions: {counts}"
    yield f"firm answers            {firm:,}, of which {len(wrong)} wrong"
    for one in wrong[:SHOWN]:
        yield from told(shrunk(one))
