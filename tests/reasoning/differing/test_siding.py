"""Which other notes side with the one and which with the other, and what that bears out."""

from fractions import Fraction

from bezelbook.reasoning.differing.siding import Sided, camps, claims, contradict, oddness, sided, weight
from tests.reasoning import making
from tests.reasoning.differing.a_clash import DEEP, SHALLOW, no, note, yes

PLUG = {"cavity": 1, "carries": "constant"}


def test_a_note_sides_with_the_one_when_it_contradicts_only_the_other() -> None:
    first, second, other = yes(), no(), making.tried("other", what="deep", sure="dry-fitted")
    unlike = making.tried("unlike", what="deep", verdict="not tried")
    book = making.book(DEEP, SHALLOW, first, second, other, unlike)
    found = sided(book, (first, second, other, unlike), first, second)
    assert found == (Sided(other, (False, True)),)


def test_two_looks_at_one_thing_contradict_each_other_where_both_speak_of_it() -> None:
    book = making.book()
    grey, white, bare = (
        note(name, "seen", **said) for name, said in (("a", {"plug": "grey"}), ("b", {"plug": "white"}), ("c", {}))
    )
    assert contradict(book, grey, white)
    assert not contradict(book, grey, bare)
    metered = note("m", "metered", plug="p", cavities=[PLUG])
    assert claims(metered) == {"p 1": "constant"}
    assert contradict(book, metered, note("n", "metered", plug="p", cavities=[PLUG | {"carries": "ground"}]))
    assert claims(making.tried()) == {}


def test_a_rule_of_succession_weighs_what_the_others_bear_out() -> None:
    """With nothing to go by one half; one for it 2/3; one against it 1/4."""
    grey = note("a", "seen", plug="grey")
    said = {"a": "late"}
    one = Sided(grey, (False, True))
    assert weight((), lambda n: said.get(n.id), "late", "early") == Fraction(1, 2)
    assert weight((one,), lambda n: said.get(n.id), "late", "early") == Fraction(2, 3)
    assert weight((one,), lambda n: said.get(n.id), "early", "late") == Fraction(1, 4)
    assert weight((one,), lambda _: None, "early", "late") == Fraction(1, 2)


def test_the_odd_one_is_the_one_that_the_others_contradict_and_two_camps_have_somebody_in_each() -> None:
    """Three against the first alone: (1 + 3) / (2 + 3), twice over; nobody against the second."""
    against = [Sided(note(name, "seen", plug="grey"), (True, False)) for name in "abc"]
    assert oddness((), 0) == 1
    assert oddness(against, 0) == Fraction(8, 5)
    assert oddness(against, 1) == Fraction(2, 5)
    assert camps(()) == 1
    assert camps(against) == Fraction(1, 4)
    assert camps([*against, Sided(note("d", "seen", plug="grey"), (False, True))]) == Fraction(1, 2)
