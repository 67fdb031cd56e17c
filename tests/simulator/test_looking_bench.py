"""Made-up shops that look: what they know after each look is what they would know from scratch, and order matters."""

from random import Random

import pytest

from bezelbook.reasoning.looks.ranking import openings
from tests.bench.looking.draw import shop
from tests.bench.looking.orders import ORDERS, can_be_settled, minutes_to_half
from tests.bench.looking.shop import Shop

SEEDS = ("t-0", "t-10", "c-2")


@pytest.fixture(scope="module")
def shops() -> list[Shop]:
    return [one for seed in SEEDS if can_be_settled(one := shop(seed))]


def test_looking_as_the_tool_says_beats_looking_at_random(shops: list[Shop]) -> None:
    minutes = {name: [minutes_to_half(one, order) for one in shops] for name, order in ORDERS.items()}
    assert len(shops) == len(SEEDS)
    assert 2 * sum(minutes["ours"]) <= sum(minutes["random"])
    assert sum(minutes["ours"]) <= sum(minutes["most asked first"])


def test_what_is_kept_from_look_to_look_is_what_would_be_worked_out_anew(shops: list[Shop]) -> None:
    one, dice = shops[0].again(), Random("any order")
    for _ in range(6):
        one.do(dice.choice(one.could()))
        anew = Shop(one.world, one.book, one.seed)
        assert one.open.keys() == anew.open.keys()
        assert [one.open[pair].needs for pair in one.open] == [anew.open[pair].needs for pair in one.open]
        assert set(one.could()) == set(anew.could())
        assert one.imagined.keys() == set(openings(one.book))


def test_whoever_looks_at_everything_has_nothing_left_to_look_at(shops: list[Shop]) -> None:
    one = shops[0].again()
    left, minutes = one.left, sum(do.minutes for do in one.could())
    one.do(*one.could())
    assert one.could() == []
    assert one.minutes == minutes
    assert one.left < left
    assert shops[0].left == left


def test_a_seed_always_makes_the_same_shop(shops: list[Shop]) -> None:
    again = shop(shops[0].seed)
    assert again.weights == shops[0].weights
    assert again.could() == shops[0].could()
