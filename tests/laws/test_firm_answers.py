"""Firm answers against the oracle: none is wrong, none is missing, and what cannot all be true is seen."""

from collections import Counter

import pytest

from tests.laws.oracle import Oracle
from tests.laws.random_worlds import world_of
from tests.laws.records import FIRM, Written

WORLDS = 10_000
BATCH = 500


@pytest.mark.parametrize("first", range(0, WORLDS, BATCH))
def test_the_book_settles_exactly_what_trying_out_every_room_settles(first: int) -> None:
    for seed in range(first, first + BATCH):
        world = world_of(seed)
        oracle = Oracle(world)
        for ask, verdict in zip(world.asks, Written(world).verdicts(), strict=True):
            if verdict in FIRM:
                assert not oracle.refutes(ask, verdict), f"world {seed}: {verdict}, though not in every room: {ask}"
            if world.settled_by_grid:
                settled = verdict if verdict in (*FIRM, "argued over") else "open"
                assert settled == oracle.verdict(ask), f"world {seed}: {verdict} to {ask}"


def test_the_worlds_hold_every_outcome_many_times() -> None:
    worlds = [world_of(seed) for seed in range(300)]
    outcomes = Counter(Oracle(world).verdict(ask) for world in worlds for ask in world.asks)
    assert {word for word, count in outcomes.items() if count >= 100} == {*FIRM, "argued over", "open"}
