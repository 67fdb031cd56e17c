from fractions import Fraction
from statistics import median
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bezelbook.kinds.note.record import After
from bezelbook.reasoning.counts.minutes import Minutes, minutes
from tests.reasoning import making
from tests.reasoning.making import CAR, HOLE


def after(named: str, *times: str | dict[str, Any], **content: Any) -> After:
    rows = [one if isinstance(one, dict) else {"scope": "radio out and in", "took": one} for one in times]
    said = {"form": "after", "vehicle": CAR, "place": HOLE, "times": rows, "author": named, "date": "2026-01-02"}
    made: After = making.record("notes", named, said | content)
    return made


def first(took: str) -> dict[str, Any]:
    return {"scope": "radio out and in", "took": took, "first_time": "first time"}


def one(*notes: After) -> Minutes:
    [found] = minutes(notes)
    return found


# Trade 4.11 and 13: 80, 95, 110 and 150 the first time.
def test_the_worked_times() -> None:
    found = one(after("a", "80 min"), after("b", "95 min"), after("c", "110 min"), after("d", first("150 min")))
    assert found.median == 95 * 60
    assert not found.thin
    assert found.words == "about 1 h 35 (1 h 20 to 1 h 50, 3 jobs; 2 h 30 the first time)"
    assert found.ask_scope == ()


def test_below_three_it_is_thin() -> None:
    found = one(after("a", "80 min"), after("b", "95 min"))
    assert found.thin
    assert found.median == Fraction(175 * 60, 2)
    assert found.words == "about 1 h 28 (1 h 20 to 1 h 35, 2 jobs)"
    assert one(after("a", "80 min")).words == "about 1 h 20 (1 h 20, one job)"


def test_only_a_first_time_is_no_median() -> None:
    found = one(after("a", first("80 min")), after("b", first("2 h")))
    assert found.median is None
    assert found.thin
    assert found.words == "1 h 20, 2 h the first time, and nobody has done it since"


def test_nothing_at_all_is_not_known() -> None:
    assert minutes([after("a")]) == ()
    assert Minutes("x", (), (), ()).words == "nobody knows"


# Trade 4.11: more than twice the median, ask the scope.
def test_more_than_twice_the_median_is_asked_about_and_kept_apart() -> None:
    found = one(*(after(name, took) for name, took in zip("abcd", ("80 min", "95 min", "110 min", "4 h"), strict=True)))
    assert [spent.note.id for spent in found.ask_scope] == ["d"]
    assert found.words == "about 1 h 35 (1 h 20 to 1 h 50, 3 jobs)"
    twice = one(*(after(name, took) for name, took in zip("abc", ("1 h", "1 h", "2 h"), strict=True)))
    assert twice.ask_scope == ()
    assert [spent.seconds for spent in twice.usual] == [3600, 3600, 7200]


def test_a_copied_job_counts_once() -> None:
    tag = {"job": "jan-02-bay-1"}
    found = one(after("a", "80 min", **tag), after("b", "80 min", **tag), after("c", "110 min"))
    assert [spent.seconds for spent in found.usual] == [80 * 60, 110 * 60]


def test_a_first_time_that_was_copied_without_saying_so_stays_one() -> None:
    tag = {"job": "jan-02-bay-1"}
    for notes in ((after("a", first("80 min"), **tag), after("b", "90 min", **tag)),) * 2:
        found = one(*notes)
        assert (found.usual, [spent.seconds for spent in found.first]) == ((), [80 * 60])
        assert one(*reversed(notes)).first == found.first


def test_of_two_notes_of_one_job_the_longer_counts() -> None:
    tag = {"job": "jan-02-bay-1"}
    assert one(after("a", "80 min", **tag), after("b", "90 min", **tag)).median == 90 * 60


def test_scopes_are_kept_apart_and_called_alike_in_any_capitals() -> None:
    bench = {"scope": "Bench", "took": "25 min", "first_time": "done before"}
    found = minutes([after("a", "80 min", bench), after("b", bench | {"scope": "bench"})])
    assert {one.scope: len(one.usual) for one in found} == {"bench": 2, "radio out and in": 1}
    assert [one.unsaid for one in found] == [0, 1]


@given(st.lists(st.integers(30, 60), min_size=1, max_size=9))
def test_the_median_is_the_libraries(times: list[int]) -> None:
    found = one(*(after(f"n-{number}", f"{time} min") for number, time in enumerate(times)))
    assert found.median == pytest.approx(60 * median(times))
    assert len(found.usual) == len(times)
