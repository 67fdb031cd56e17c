"""The chain of pieces against every set there is, on thousands of small books."""

from collections import Counter
from collections.abc import Iterator
from dataclasses import replace

import pytest

from bezelbook.reasoning.circuits.outcome import Outcome
from tests.laws.wiring_oracle import every_cost
from tests.laws.wiring_records import chain_of
from tests.laws.wiring_world import NEVER_MADE_UP, World, world_of

BOOKS = 2_000
STEP = 100


def faults(seed: int) -> Iterator[str]:
    """What is wrong with the chain of one book: its price, or that it is none of the safe sets at that price."""
    world = world_of(seed)
    names, outcome = chain_of(world)
    safe = list(every_cost(world))
    if outcome.cost != min(cost for _, cost in safe):
        yield f"{seed} costs {outcome.cost}"
    if (frozenset(names), outcome.cost) not in safe:
        yield f"{seed} is not safe at that price"
    yield from (f"{seed} makes up {circuit}" for circuit in made_up(world, outcome))


def made_up(world: World, outcome: Outcome) -> Iterator[str]:
    """Signals that must never be made up and that come from something else than the car's wire or a box on its bus."""
    makers = {one.name: [circuit for circuit, word in one.ways.items() if word == "makes"] for one in world.adapters}
    makers |= {one.name: list(one.gives) for one in world.modules if "bus" not in one.wants}
    for need, feed in outcome.feeds.items():
        source = feed.at[0].partition("/")[2] if feed.at else ""
        if need.circuit in NEVER_MADE_UP and need.circuit in makers.get(source, ()):
            yield need.circuit


@pytest.mark.parametrize("first", range(0, BOOKS, STEP))
def test_the_chain_is_safe_and_costs_what_the_cheapest_of_all_safe_sets_costs(first: int) -> None:
    assert [fault for seed in range(first, first + STEP) for fault in faults(seed)] == []


def test_the_books_are_of_every_sort() -> None:
    chains = [chain_of(world_of(seed)) for seed in range(300)]
    counted = Counter(len(names) for names, _ in chains)
    assert min(counted[0], counted[1]) >= 60
    assert counted[2] + counted[3] >= 20
    assert sum(outcome.cost[0] == 0 for _, outcome in chains) >= 30
    states = Counter(feed.state for _, outcome in chains for feed in outcome.feeds.values())
    assert min(states[state] for state in ("known", "said", "not looked", "not there")) >= 30


def test_one_more_piece_to_choose_from_never_makes_a_chain_dearer() -> None:
    for seed in range(100):
        world = world_of(seed)
        fewer = replace(world, adapters=world.adapters[1:], modules=world.modules[1:])
        gone = {one.name for one in world.adapters[:1]} | {one.name for one in world.modules[:1]}
        needed = {one.needs_adapter for one in fewer.modules} | {one.needs_module for one in fewer.adapters}
        if not gone & needed:
            assert chain_of(world)[1].cost <= chain_of(fewer)[1].cost


def test_in_whatever_order_the_pieces_lie_the_chain_is_the_same() -> None:
    for seed in range(100):
        world = world_of(seed)
        turned = replace(world, adapters=world.adapters[::-1], modules=world.modules[::-1])
        assert chain_of(world) == chain_of(turned)


def test_what_nobody_metered_is_never_known() -> None:
    for seed in range(100):
        world = world_of(seed)
        blind = replace(world, plugs=tuple(replace(plug, has=(), all_read=False) for plug in world.plugs))
        _, outcome = chain_of(blind)
        made = {circuit for one in world.adapters for circuit, word in one.ways.items() if word == "makes"}
        given = {circuit for one in world.modules for circuit in one.gives}
        known = {
            need.circuit for need, feed in outcome.feeds.items() if feed.state == "known" and need.kind != "through"
        }
        assert known <= made | given
