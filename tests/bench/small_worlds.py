"""How much of what small worlds settle is answered firmly, by the oracle that tries out every room."""

from collections import Counter as Tally
from collections.abc import Generator

from tests.laws.oracle import Oracle
from tests.laws.random_worlds import world_of
from tests.laws.records import FIRM, Written

WORLDS = 5_000


def share_settled(first: int, worlds: int = WORLDS) -> Generator[str, None, int]:
    """Try so many worlds, from a seed on, and say what share of what is settled the book says too.

    What it comes to is how many firm answers were wrong.
    """
    tally: Tally[str] = Tally()
    for seed in range(first, first + worlds):
        world = world_of(seed)
        oracle = Oracle(world)
        for ask, verdict in zip(world.asks, Written(world).verdicts(), strict=True):
            tally["wrong"] += verdict in FIRM and oracle.refutes(ask, verdict)
            settled = oracle.verdict(ask) if world.settled_by_grid else "open"
            tally["settled"] += settled in FIRM
            tally["answered"] += settled in FIRM and settled == verdict
    share = 100 * tally["answered"] / tally["settled"]
    yield f"small worlds            {worlds:,} of them, from {first} on; {tally['wrong']} firm answers wrong"
    yield f"settled by the oracle   {tally['settled']:,}, of which {share:.2f} % are answered firmly"
    return tally["wrong"]
