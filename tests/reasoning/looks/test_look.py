from fractions import Fraction

from bezelbook.reasoning.looks.look import CHASSIS, PLUG, Promise, Todo, looks_of
from bezelbook.reasoning.looks.pair import Pair
from tests.reasoning import making

ONE, TWO = (Pair(making.CAR, making.HOLE, (), unit) for unit in ("box", "deep"))
BY_WIRE = Todo(making.CAR, making.HOLE, (), "depth", "wire", 2, Fraction(5, 4))
BY_TAPE = Todo(making.CAR, making.HOLE, (), "depth", "tape", 2, Fraction(5, 4))
ON_THE_BENCH = Todo(None, None, (), "plug", "ruler", 3, Fraction(3, 4), "box")
HALF, NOTHING = Fraction(1, 2), Fraction(0)


def test_a_look_is_worth_what_it_settles_for_its_minutes() -> None:
    # One is settled in two of four readings, the other in one: by hand 1/2 / 2 min x (1 + 3) + 1/4 / 2 min x 1 = 9/8
    # pairs a minute, times 5/4 bay-hours.
    promised = [(BY_WIRE, ONE, Promise(HALF, HALF)), (BY_WIRE, TWO, Promise(Fraction(1, 4), Fraction(1, 4)))]
    [look] = looks_of(promised, lambda pair: 4 if pair == ONE else 1)
    assert look.settles == {ONE: Fraction(1, 2), TWO: Fraction(1, 4)}
    assert look.worth == Fraction(9, 8) * Fraction(5, 4)
    assert look.expected == Fraction(3, 4)
    assert look.helps == ()


def test_what_a_look_settles_only_together_with_others_counts_by_what_all_of_them_take() -> None:
    # A pair of weight 2, settled for certain in 2 + 3 minutes.
    [look] = looks_of([(BY_WIRE, ONE, Promise(NOTHING, Fraction(1), frozenset({ON_THE_BENCH})))], lambda _: 2)
    assert not look.settles
    assert look.helps == (ONE,)
    assert look.expected == 0
    assert look.worth == Fraction(2, 5) * Fraction(5, 4)


def test_others_that_several_pairs_take_count_once() -> None:
    both = [(BY_WIRE, pair, Promise(NOTHING, Fraction(1), frozenset({ON_THE_BENCH}))) for pair in (ONE, TWO)]
    [look] = looks_of(both, lambda _: 1)
    assert look.worth == Fraction(2, 5) * Fraction(5, 4)


def test_a_pair_that_takes_so_many_others_that_it_would_pay_less_is_left_for_later() -> None:
    cheap = (BY_WIRE, ONE, Promise(HALF, HALF))
    dear = (BY_WIRE, TWO, Promise(NOTHING, Fraction(1), frozenset({ON_THE_BENCH, BY_TAPE})))
    # Half of 4 in 2 minutes is 1 a minute; with one more pair in 2 + 3 + 2 minutes it would be 3/7.
    [look] = looks_of([dear, cheap], lambda pair: 4 if pair == ONE else 1)
    assert look.worth == Fraction(5, 4)


def test_promises_of_one_thing_to_do_are_one_look() -> None:
    promised = [(todo, pair, Promise(HALF, HALF)) for pair in (ONE, TWO) for todo in (BY_WIRE, BY_TAPE)]
    assert [(look.todo, set(look.settles)) for look in looks_of(promised, lambda _: 1)] == [
        (BY_WIRE, {ONE, TWO}),
        (BY_TAPE, {ONE, TWO}),
    ]
    assert list(looks_of([], lambda _: 1)) == []


def test_a_wrong_answer_costs_the_middle_of_what_the_trade_says() -> None:
    # Trade 1.3, common practice, no source: too deep 0.5 to 2 bay-hours, plugs or loom in the way 0.5 to 1.
    assert Fraction("0.5") + 2 == CHASSIS * 2
    assert Fraction("0.5") + 1 == PLUG * 2


def test_the_pair_that_pays_best_for_its_minutes_counts_first_though_another_weighs_more() -> None:
    # 4 in 2 + 3 + 2 minutes, 3 in 2 minutes: the latter alone is 3/2 a minute, both together 7/7.
    more = (BY_WIRE, ONE, Promise(NOTHING, Fraction(1), frozenset({ON_THE_BENCH, BY_TAPE})))
    quick = (BY_WIRE, TWO, Promise(Fraction(1), Fraction(1)))
    [look] = looks_of([more, quick], lambda pair: 4 if pair == ONE else 3)
    assert look.worth == Fraction(3, 2) * Fraction(5, 4)
