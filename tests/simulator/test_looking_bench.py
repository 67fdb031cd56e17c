"""Made-up shops that look: what they know after each look is what they would know from scratch, and order matters."""

from random import Random

import pytest

from bezelbook.reasoning.looks.ranking import openings
from tests.bench.looking.draw import shop
from tests.bench.looking.orders import (
    ORDERS,
    STOPPED,
    as_do,
    at_random,
    at_random_read_first,
    compared,
    minutes_to_half,
    most_asked_first,
    ours,
)
from tests.bench.looking.shop import Shop

SEEDS = ("t-0", "t-10", "c-2")
QUICK = "481516-looks-2"


@pytest.fixture(scope="module")
def shops() -> list[Shop]:
    return [one for seed in SEEDS if (one := shop(seed)).open]


def test_looking_as_the_tool_says_beats_looking_at_random(shops: list[Shop]) -> None:
    """Anything at all is left once it has taken twice as long, which is all that is asked here."""
    first = [minutes_to_half(one, ours) for one in shops]
    at_all = [minutes_to_half(one, at_random, 2 * most) for one, most in zip(shops, first, strict=True)]
    assert 2 * sum(first) <= sum(at_all)
    for order in (most_asked_first, at_random_read_first):
        assert sum(first) <= sum(minutes_to_half(one, order) for one in shops)


def test_whoever_stops_early_has_spent_no_more_than_whoever_does_not(shops: list[Shop]) -> None:
    def stopped(most: int | None) -> int:
        return minutes_to_half(shops[2], most_asked_first, most)

    whole = stopped(None)
    assert [stopped(most) for most in (0, 3, whole, whole + 1)] == [0, 3, whole, whole]


def test_a_shop_is_looked_at_in_every_order() -> None:
    found = compared(QUICK)
    assert found.keys() == ORDERS.keys()
    assert found["random"] <= STOPPED * found["ours"]
    assert all(minutes > 0 for minutes in found.values())


def test_what_is_kept_from_look_to_look_is_what_would_be_worked_out_anew(shops: list[Shop]) -> None:
    one, dice = shops[0].again(), Random("any order")
    for step in range(8):
        one.do(dice.choice([do for do in one.could() if do.is_offer == (step % 2 > 0)]))
        anew = Shop(one.metal.world, one.book, one.seed)
        assert one.open.keys() == anew.open.keys() & one.weights.keys()
        assert [one.open[pair].needs for pair in one.open] == [anew.open[pair].needs for pair in one.open]
        assert {do for do in one.could() if not do.is_offer} == {do for do in anew.could() if not do.is_offer}
        assert all(one.offers(pair) == anew.offers(pair) for pair in one.open)
        assert one.imagined.keys() == set(openings(one.book))


def test_whoever_looks_at_everything_has_nothing_left_to_look_at(shops: list[Shop]) -> None:
    one = shops[0].again()
    read = [do for do in one.could() if not do.is_offer]
    left, minutes = one.left, sum(do.minutes for do in read)
    one.do(*read)
    assert all(do.is_offer for do in one.could())
    assert one.minutes == minutes
    assert 0 < one.left < left
    for _ in range(2):
        one.do(*one.could())
    assert one.could() == []
    assert one.left == 0
    assert shops[0].left == left


def test_what_is_offered_up_is_settled_by_what_the_metal_says(shops: list[Shop]) -> None:
    one, verdicts, settled = shops[1].again(), set(), 0
    for pair in Random("any order").sample(list(one.open), len(one.open)):
        if pair in one.open:
            offers, minutes = one.offers(pair), one.minutes
            one.do(*offers)
            assert pair not in one.open
            assert one.minutes == minutes + 5 * len(offers)
            verdicts |= {one.metal.offered(do, knows_exit=False)["verdict"] for do in offers}
            settled += 1
    assert settled > 10
    assert verdicts == {"goes in", "does not"}
    assert one.left == 0


def test_the_tool_names_what_is_offered_up_as_it_can_be_done(shops: list[Shop]) -> None:
    for one in shops:
        could = set(one.could())
        offered = [do for look in one.looks() if (do := as_do(one, look)) and do.is_offer]
        assert offered
        assert set(offered) <= could


def test_a_seed_always_makes_the_same_shop(shops: list[Shop]) -> None:
    again = shop(shops[0].seed)
    assert again.weights == shops[0].weights
    assert again.could() == shops[0].could()
