from fractions import Fraction

from bezelbook.reasoning.looks.look import CHASSIS, PLUG, Todo, look_of
from bezelbook.reasoning.looks.pair import Pair
from tests.reasoning import making

ONE, TWO = (Pair(making.CAR, making.HOLE, (), unit) for unit in ("box", "deep"))
BY_WIRE = Todo(making.CAR, making.HOLE, (), "depth", "wire", 2, Fraction(5, 4))


def test_a_look_is_worth_what_it_settles_for_its_minutes() -> None:
    asked = making.record(
        "questions", "asked", {"words": "?", "times": 3, "vehicle": making.CAR, "place": making.HOLE, "what": "box"}
    )
    base = making.book(making.unit(), making.unit("deep"), asked)
    # Of four readings the first is settled by two, the second by one: by hand 2/4 x (1 + 3) + 1/4 x 1 = 9/4 pairs,
    # times 5/4 bay-hours over 2 minutes.
    look = look_of(base, BY_WIRE, [[ONE, TWO], [ONE], [], []])
    assert look is not None
    assert look.settles == {ONE: Fraction(1, 2), TWO: Fraction(1, 4)}
    assert look.worth == Fraction(9, 4) * Fraction(5, 4) / 2
    assert look.expected == Fraction(3, 4)


def test_a_look_that_settles_nothing_is_none() -> None:
    assert look_of(making.book(), BY_WIRE, [[], []]) is None
    assert look_of(making.book(), BY_WIRE, []) is None


def test_a_wrong_answer_costs_the_middle_of_what_the_trade_says() -> None:
    # Trade 1.3, common practice, no source: too deep 0.5 to 2 bay-hours, plugs or loom in the way 0.5 to 1.
    assert Fraction("0.5") + 2 == CHASSIS * 2
    assert Fraction("0.5") + 1 == PLUG * 2
