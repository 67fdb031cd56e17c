"""The heaviest comes first, then what was asked oftenest and costs most; ties go by key."""

from dataclasses import replace
from fractions import Fraction

from bezelbook.checking.ranking import Rank, in_order, ranks
from bezelbook.finding import Finding, Quote
from bezelbook.reasoning.losses import GLASS_HIT, TOO_DEEP
from bezelbook.reasoning.proposal import Proposal
from tests.reasoning import making

FOUND = Finding(
    rule="r",
    key="r/x",
    weight="look first",
    says="it is so",
    quotes=(Quote("yes", "goes in"),),
    difference="the mount",
    proposals=(Proposal("mount", "the mount"),),
    loss=TOO_DEEP,
    question="What?",
    answers=("a", "b"),
    vehicle=making.CAR,
    place=making.HOLE,
)


def test_the_cost_is_answers_times_asking_times_bay_hours() -> None:
    """Trade 4.14; too deep costs 0.5 to 2 bay-hours, so 1.25 halfway."""
    asked = making.record(
        "questions", "q", {"words": "x", "vehicle": making.CAR, "place": making.HOLE, "what": "box", "times": 4}
    )
    book = making.book(making.unit(), making.tried("yes"), asked)
    found = ranks(
        book,
        [FOUND, replace(FOUND, key="r/y", vehicle="", place="", quotes=(Quote("box", "a size", (), "head_unit"),))],
    )
    assert found["r/x"] == Rank(1, 4, Fraction(25, 4))
    assert found["r/y"] == Rank(1, 0, Fraction(5, 4))


def test_the_list_is_ordered_by_weight_then_cost_then_key() -> None:
    dear, stop, later = (
        replace(FOUND, key="r/dear", loss=GLASS_HIT),
        replace(FOUND, key="r/stop", weight="stop"),
        replace(FOUND, key="r/a"),
    )
    book = making.book(making.unit(), making.tried("yes"))
    found = [FOUND, later, dear, stop]
    assert [one.key for one in in_order(found, ranks(book, found))] == ["r/stop", "r/dear", "r/a", "r/x"]


def test_the_words_say_why() -> None:
    assert Rank(3, 4, Fraction(1)).words == "asked 4 times; 3 answers hang on it"
    assert Rank(1, 1, Fraction(1)).words == "asked once; one answer hangs on it"
    assert Rank(2, 0, Fraction(1)).words == "2 answers hang on it"
