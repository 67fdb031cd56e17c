"""The chain of pieces against every set there is, on thousands of small books."""

from collections import Counter
from collections.abc import Iterator
from dataclasses import replace

import pytest

from bezelbook.reasoning.circuits.chain import Chain
from bezelbook.reasoning.circuits.look_alikes import look_alikes
from bezelbook.reasoning.circuits.outcome import Feed, Outcome
from bezelbook.reasoning.circuits.remedies import lacks
from bezelbook.reasoning.circuits.table import table
from bezelbook.reasoning.circuits.wiring import Need
from tests.laws.wiring_oracle import every_cost
from tests.laws.wiring_records import chain_of, whole_chain_of
from tests.laws.wiring_world import KEYS, NEVER_MADE_UP, World, world_of

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


def fakers(world: World) -> dict[str, list[str]]:
    """By piece, the circuits that it makes up: an adapter by itself, or a box that does not read the bus."""
    makers = {one.name: [circuit for circuit, word in one.ways.items() if word == "makes"] for one in world.adapters}
    return makers | {one.name: list(one.gives) for one in world.modules if "bus" not in one.wants}


def made_up(world: World, outcome: Outcome) -> Iterator[str]:
    """Signals that must never be made up and that come from something else than the car's wire or a box on its bus."""
    makers = fakers(world)
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
    assert sum(outcome.cost[0] == 0 for _, outcome in chains) >= 20
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


def test_nothing_that_fakes_a_signal_is_offered_as_a_remedy() -> None:
    asked = 0
    for seed in range(200):
        world = world_of(seed)
        makers = fakers(world)
        for lack in lacks(whole_chain_of(world)):
            if lack.circuit in NEVER_MADE_UP:
                asked += 1
                offered = [name for name in makers if any(f"the {name}" in words for words in lack.remedies)]
                assert not [name for name in offered if lack.circuit in makers[name]], seed
    assert asked >= 50


def limit_said(most: int | None, relay: str) -> str:
    """How a limit given in milliamp is said, here in plain words of its own."""
    number = f"{most // 1000} A" if most and most >= 1000 else f"{most} mA"
    return f"{number} at most, {relay} for more" if most else ""


def test_what_a_box_gives_is_said_with_its_limit_and_a_relay_for_more() -> None:
    limited = blank = 0
    for seed in range(200):
        world = world_of(seed)
        chain = whole_chain_of(world)
        rows = {row.circuit: row.words for row in table(chain)}
        said = [(feed.at[0], need.circuit, rows[need.circuit], "a relay") for need, feed in feeds_of(chain) if feed.at]
        said += [
            (f"module/{box.name}", lack.circuit, words, "with a relay")
            for lack in lacks(chain)
            for words in lack.remedies
            for box in world.modules
            if words.startswith(f"the {box.name}")
        ]
        boxes = {f"module/{one.name}": one for one in world.modules}
        for name, circuit, words, relay in said:
            if name in boxes and circuit in ("accessory", "reverse"):
                most = boxes[name].most[circuit]
                limited, blank = limited + (most is not None), blank + (most is None)
                assert limit_said(most, relay) in words, seed
                assert most or "at most" not in words, seed
    assert min(limited, blank) >= 3


def feeds_of(chain: Chain) -> list[tuple[Need, Feed]]:
    return list(chain.outcome.feeds.items()) if chain.outcome else []


def test_only_what_has_the_very_key_is_plugged_together_and_the_look_alikes_are_told_apart() -> None:
    mated = 0
    for seed in range(120):
        world = world_of(seed)
        chain = whole_chain_of(world)
        halves: dict[tuple[str, str], tuple[str, str]] = {
            ("the car", str(number)): (plug.connector, "vehicle side") for number, plug in enumerate(world.plugs)
        }
        halves |= {("the radio that stays", ""): world.radio} if world.radio else {}
        halves |= {("what goes in", ""): world.unit} if world.unit else {}
        ends = {(f"adapter/{one.name}", letter): end for one in world.adapters for letter, end in one.ends.items()}
        halves |= {socket: end for socket, end in ends.items() if end}
        for one, other in chain.outcome.plugged if chain.outcome else ():
            mated += 1
            assert halves[one][0] == halves[other][0], seed
            assert {halves[one][1], halves[other][1]} == {"vehicle side", "unit side"}, seed
        for plug in world.plugs:
            alikes = {one.connector: one.difference for one in look_alikes(chain.car.book, plug.connector)}
            assert set(alikes) == set(KEYS) - {plug.connector}
            assert all(KEYS[plug.connector] in words and KEYS[name] in words for name, words in alikes.items())
    assert mated >= 50


def test_nothing_that_feeds_what_stays_is_left_open() -> None:
    """A lead that cuts what must go on, and has no loop-back for it, is never the only piece."""
    tempted = 0
    for seed in range(200):
        world = world_of(seed)
        kept = {circuit for circuit, kind, _ in world.needs if kind == "through"} & set(world.plugs[0].has)
        names = chain_of(world)[0]
        for one in world.adapters:
            cut = {circuit for circuit in kept if one.ways.get(circuit) == "broken out"} - set(one.loops)
            if cut and one.made_for == "this car" and one.ends["a"] == (world.plugs[0].connector, "unit side"):
                tempted += 1
                assert names != (one.name,), seed
    assert tempted >= 10
