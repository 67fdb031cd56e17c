"""Made-up shops that write nothing false: how many firm answers their books give, and how many are wrong."""

from collections import Counter as Tally
from collections.abc import Generator

from tests.simulator.counter import FIRM, Draw, Wrong, make, tried_out
from tests.simulator.doors.draw import draw_door_world
from tests.simulator.draw_world import draw_world
from tests.simulator.regimes import HONEST
from tests.simulator.shrinking import shrunk, told

WANTED, AT_DOORS = 100_000, 10_000
# Made-up bodies for each opening, beside the published questions; each so-many-th question is answered in full as well.
NEAR, WHOLE = 400, 2_000
NEAR_DOORS = 60
NOTES = (30, 40, 50, 60, 75)
SHOWN = 3


def lived_through(seed: str) -> Generator[str, None, int]:
    """Shops with openings, then shops with doors, each kind until it gave enough firm answers.

    What it comes to is how many of those were wrong.
    """
    wrong = yield from of_one_kind("openings", seed, draw_world, WANTED, NEAR)
    at_doors = yield from of_one_kind("doors", f"{seed}-doors", draw_door_world, AT_DOORS, NEAR_DOORS)
    return wrong + at_doors


def of_one_kind(kind: str, seed: str, draw: Draw, wanted: int, near: int) -> Generator[str, None, int]:
    """Open one made-up shop after another until there are enough firm answers; say and return how many were wrong."""
    tally: Tally[str] = Tally()
    wrong: list[Wrong] = []
    shops = 0
    while tally["goes in"] + tally["does not"] < wanted:
        made = make(f"{seed}-{shops}", HONEST, NOTES[shops % len(NOTES)], draw)
        found, faults = tried_out(made, near, WHOLE)
        tally += found
        wrong += faults
        shops += 1
    firm = sum(tally[verdict] for verdict in FIRM)
    counts = ", ".join(f"{count:,} {verdict}" for verdict, count in tally.most_common())
    yield f"honest shops, {kind:<10}{shops} of them, {tally.total():,} questions: {counts}"
    yield f"firm answers            {firm:,}, of which {len(wrong)} wrong"
    for one in wrong[:SHOWN]:
        yield from told(shrunk(one))
    return len(wrong)
