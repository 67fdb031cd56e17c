from hypothesis import given
from hypothesis import strategies as st

from bezelbook.reasoning.counts.together import Work, together

pieces = st.frozensets(st.sampled_from("abcdef"))
works = st.lists(st.builds(Work, st.just("job"), st.integers(0, 10**4), pieces), max_size=5)
TIMES = {piece: 60 * number for number, piece in enumerate("abcde", 1)}


# Trade 4.11: a shared removal counts once, dash and speakers; common practice.
def test_two_jobs_that_share_a_way_in_pay_for_it_once() -> None:
    dash = Work("dash", 30 * 60, frozenset({"strip", "bezel"}))
    screen = Work("screen", 10 * 60, frozenset({"bezel"}))
    minutes = {"strip": 4 * 60, "bezel": 5 * 60}
    assert together([dash, screen], minutes) == (49 * 60, frozenset())
    assert together([dash], minutes) == (39 * 60, frozenset())
    assert together([], minutes) == (0, frozenset())


def test_what_nobody_timed_is_named() -> None:
    assert together([Work("dash", 60, frozenset({"strip", "gone"}))], {"strip": 30}) == (90, frozenset({"gone"}))


@given(works, works)
def test_together_takes_no_longer_than_one_after_the_other_and_no_shorter_than_either(
    some: list[Work], others: list[Work]
) -> None:
    both = together([*some, *others], TIMES)[0]
    apart = together(some, TIMES)[0], together(others, TIMES)[0]
    assert max(apart) <= both <= sum(apart)
