from collections.abc import Mapping
from itertools import combinations
from random import Random

import pytest

from bezelbook.reasoning.circuits.cheapest import Cost, Found, Item, Wanted, cheapest_set

Ways = tuple[tuple[tuple[str, ...], tuple[str, ...]], ...]


def cost_of(items: Mapping[str, Item[str]], goals: tuple[str, ...], names: tuple[str, ...]) -> Cost:
    """What a set costs: goals it does not reach, by trying every way again until nothing is new, and its price."""
    found = {"s"}
    for _ in range(10):
        for name in names:
            for tails, heads in items[name].ways:
                found |= set(heads) if set(tails) <= found else set()
    return (len(set(goals) - found), sum(items[name].price for name in names))


def best(items: Mapping[str, Item[str]], goals: tuple[str, ...]) -> Found | None:
    return cheapest_set(items.values(), Wanted(("s",), (goals,)), lambda names: cost_of(items, goals, names))


def made(dice: Random) -> dict[str, Item[str]]:
    nodes = ("s", "a", "b", "c", "t", "u")
    items = {}
    for name in ("one", "two", "three", "four", "five"):
        ways: Ways = tuple(
            (tuple(dice.sample(nodes, dice.randint(0, 2))), tuple(dice.sample(nodes, dice.randint(1, 2))))
            for _ in range(dice.randint(1, 3))
        )
        items[name] = Item(name, dice.randint(1, 4), ways)
    return items


@pytest.mark.parametrize("seed", range(150))
def test_no_set_of_things_costs_less(seed: int) -> None:
    items = made(Random(seed))  # noqa: S311 - made-up things need no cryptography
    every = [names for size in range(6) for names in combinations(sorted(items), size)]
    found = best(items, ("t", "u"))
    assert found is not None
    assert (found.cost, found.names) == min((cost_of(items, ("t", "u"), names), names) for names in every)


def test_a_thing_that_serves_twice_is_paid_once() -> None:
    items = {"hub": Item("hub", 3, ((("s",), ("a",)), (("b",), ("t",)))), "link": Item("link", 1, ((("a",), ("b",)),))}
    assert best(items, ("t",)) == Found(("hub", "link"), (0, 4))


def test_with_nothing_allowed_there_is_no_set() -> None:
    assert cheapest_set([Item("one", 1, ())], Wanted(("s",), ((),)), lambda _: None) is None


def test_a_thing_for_nothing_is_weighed_even_where_no_goal_is_in_reach() -> None:
    free = Item("free", 0, ((("s",), ("a",)),))
    costs = {(): (1, 0, 1), ("free",): (1, 0, 0)}
    assert cheapest_set([free], Wanted(("s",), (("t",),)), costs.get) == Found(("free",), (1, 0, 0))


def test_a_set_that_can_no_longer_be_the_best_is_not_weighed() -> None:
    weighed: list[tuple[str, ...]] = []
    items = {name: Item(name, price, ((("s",), ("t",)),)) for name, price in (("a", 1), ("b", 2), ("c", 3))}

    def cost(names: tuple[str, ...]) -> Cost:
        weighed.append(names)
        return cost_of(items, ("t",), names)

    assert cheapest_set(items.values(), Wanted(("s",), (("t",),)), cost) == Found(("a",), (0, 1))
    assert weighed == [(), ("c",), ("b",), ("a",)]
    weighed.clear()
    items |= {name: Item(name, 1, ((("s",), ("u",)),)) for name in "bc"}
    assert cheapest_set(items.values(), Wanted(("s",), (("t",),)), cost) == Found(("a",), (0, 1))
    assert weighed == [(), ("a",)], "without it nothing reaches the goal"
