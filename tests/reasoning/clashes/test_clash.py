"""Cores of one state, size and reason are told together, the smallest first."""

from bezelbook.reasoning.clashes.clash import Core, Explained, gathered, near, shared_builds, state_of
from bezelbook.values.quantity import read_quantity
from tests.reasoning.making import tried

EARLY, LATE = (("build", "early"),), (("build", "late"),)
A, B, C = tried("a"), tried("b"), tried("c")


def core(*notes: object, size: str = "depth") -> Core:
    return Core(tuple(notes), size, (EARLY,), Explained("room"))  # type: ignore[arg-type]


def test_two_cores_of_one_size_are_one_clash() -> None:
    (clash,) = gathered([core(A, B, C), core(B, C)])
    assert (clash.first.notes, clash.others, clash.state) == ((B, C), (A,), "early")


def test_two_sizes_are_two_clashes() -> None:
    assert [clash.first.size for clash in gathered([core(A, B, size="width"), core(A, B)])] == ["depth", "width"]


def test_the_state_is_the_builds_or_any() -> None:
    assert [state_of([EARLY, LATE]), state_of([()])] == ["early+late", "any build"]


def test_the_builds_of_a_clash_are_those_that_all_notes_may_be_of() -> None:
    assert shared_builds([(EARLY, LATE), (LATE,)]) == (LATE,)
    assert shared_builds([(EARLY,), (LATE,)]) == (EARLY,)


def test_a_number_is_near_another_within_its_own_give() -> None:
    assert near(read_quantity("10 ± 1 mm", "length"), 11_000_000, 0)
    assert not near(read_quantity("10 mm", "length"), 11_000_001, 1_000_000)
