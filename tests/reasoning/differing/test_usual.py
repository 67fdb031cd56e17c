"""How often a value is said, and whether a blank is unlike its author."""

from fractions import Fraction

from bezelbook.kinds.note.record import AnyNote, Tried
from bezelbook.reasoning.differing.usual import chance, shares, unlike_its_author
from tests.reasoning import making


def loom(note: AnyNote) -> str | None:
    assert isinstance(note, Tried)
    return note.loom


def test_shares_are_counted_with_one_more_of_each() -> None:
    notes = [making.tried(f"n{number}", loom=way) for number, way in enumerate(("aside", "aside", "behind", None))]
    assert shares(notes, loom, ("aside", "behind")) == {"aside": Fraction(3, 5), "behind": Fraction(2, 5)}


def test_what_nobody_named_comes_as_often_as_what_was_named_once() -> None:
    notes = [making.tried(f"n{number}", loom=way) for number, way in enumerate(("aside", "aside", "behind"))]
    found = shares(notes, loom, ("aside", "behind", "elsewhere"), "elsewhere")
    assert found == {"aside": Fraction(3, 7), "behind": Fraction(2, 7), "elsewhere": Fraction(2, 7)}


def test_what_is_said_is_certain() -> None:
    usual = {"aside": Fraction(3, 5), "behind": Fraction(2, 5)}
    assert chance(None, usual, Fraction(1, 2)) == usual
    assert chance("behind", usual, Fraction(0)) == {"aside": 0, "behind": 1}


def test_a_doubt_is_shared_among_the_others_as_usual() -> None:
    usual = {"a": Fraction(1, 2), "b": Fraction(1, 3), "c": Fraction(1, 6)}
    assert chance("a", usual, Fraction(1, 4)) == {"a": Fraction(3, 4), "b": Fraction(1, 6), "c": Fraction(1, 12)}
    assert chance("a", {"a": Fraction(1)}, Fraction(1, 4)) == {"a": 1}


def test_a_blank_is_unlike_whoever_always_says() -> None:
    blank = making.tried("blank", loom=None, author="ab")
    says = [making.tried(f"n{number}", loom="aside", author="ab") for number in range(2)]
    assert unlike_its_author([*says, blank], blank, loom)
    assert not unlike_its_author([says[0], blank], blank, loom)
    assert not unlike_its_author([*says, making.tried("other", loom=None, author="ab"), blank], blank, loom)
    assert not unlike_its_author(says, says[0], loom)
    assert not unlike_its_author(says, making.tried("nobody", loom=None), loom)
