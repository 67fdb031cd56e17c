"""The chain of pieces against every set there is, on thousands of small books."""

import pytest

from tests.laws.wiring_oracle import cheapest, every_cost
from tests.laws.wiring_records import chain_of
from tests.laws.wiring_world import World, world_of

BOOKS = 2_000
STEP = 100


def disagreements(first: int) -> list[int]:
    """The seeds of one step in which the chain costs something else than the cheapest safe set."""
    return [seed for seed in range(first, first + STEP) if chain_of(world_of(seed))[1].cost != cheapest(world_of(seed))]


@pytest.mark.parametrize("first", range(0, BOOKS, STEP))
def test_the_chain_costs_what_the_cheapest_of_all_safe_sets_costs(first: int) -> None:
    assert disagreements(first) == []
