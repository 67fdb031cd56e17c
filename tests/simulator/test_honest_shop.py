"""In a shop whose notes are true within their ±, no firm answer is wrong; in one where they are not, it would show."""

from collections import Counter as Tally

import pytest

from tests.simulator.counter import FIRM, Made, asks, make, tried_out
from tests.simulator.questions import Ask
from tests.simulator.regimes import HONEST, UPSIDE_DOWN
from tests.simulator.shrinking import shrunk, told
from tests.simulator.truth import outcomes

SEEDS = [f"book {number}" for number in range(12)]


@pytest.fixture(scope="module")
def honest() -> list[Made]:
    return [make(seed, HONEST, notes) for seed, notes in zip(SEEDS, range(20, 56, 3), strict=True)]


def test_no_firm_answer_is_wrong_in_an_honest_shop(honest: list[Made]) -> None:
    tally: Tally[str] = Tally()
    for made in honest:
        found, wrong = tried_out(made, near=80, whole=1_000)
        assert not wrong, "\n".join(told(shrunk(wrong[0])))
        tally += found
    assert all(tally[verdict] >= 100 for verdict in FIRM)


def test_where_half_of_the_verdicts_are_turned_round_wrong_answers_are_found_and_can_be_made_small() -> None:
    for number in range(20):
        made = make(f"upside down {number}", UPSIDE_DOWN, 60)
        _, wrong = tried_out(made, near=60, whole=10_000)
        if wrong:
            small = shrunk(wrong[0])
            assert 1 <= len(small.notes) < len(made.notes)
            assert any(note.false == "the other verdict" for note in small.notes)
            return
    pytest.fail("no wrong answer was found")


def test_an_honest_shop_keeps_its_falsehoods_to_what_carries_no_answer(honest: list[Made]) -> None:
    kinds = Tally(note.false for made in honest for note in made.notes)
    assert set(kinds) <= {None, "hearsay", "told twice", "a slip"}
    assert kinds["hearsay"] >= 5
    weak = [note for made in honest for note in made.notes if note.false == "hearsay"]
    assert all(note.content["sure"] in ("told", "eyeballed", "worked out") for note in weak)


def test_much_is_left_blank_and_much_is_said(honest: list[Made]) -> None:
    notes = [note.content for made in honest for note in made.notes if note.content["form"] == "tried"]
    for key in ("splits", "mounts", "cut", "loom", "plugs", "year", "job"):
        said = sum(key in content for content in notes)
        assert len(notes) * 0.1 < said < len(notes) * 0.95, key


def test_the_questions_have_both_answers_in_truth(honest: list[Made]) -> None:
    true = Tally(
        frozenset(outcomes(ask, [ask.kits]))
        for made in honest[:3]
        for ask in asks(made, 60)
        if isinstance(ask, Ask) and ask.kits is not None
    )
    assert all(true[frozenset({verdict})] > 100 for verdict in FIRM)
    assert true[frozenset(FIRM)] > 100


def test_a_seed_always_makes_the_same_book(honest: list[Made]) -> None:
    again = make(SEEDS[0], HONEST, 20)
    assert (again.world, again.notes) == (honest[0].world, honest[0].notes)
    assert list(asks(again, 20)) == list(asks(honest[0], 20))
