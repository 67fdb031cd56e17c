"""The counter answers words, data and lines, and solves each place once."""

from typing import Any

import pytest

from bezelbook.counter import Counter
from bezelbook.reasoning.answer import Answer
from bezelbook.reasoning.next_best import desk
from tests.reasoning import making


@pytest.fixture
def at() -> Counter:
    return Counter(making.book(making.vehicle(), making.unit(), making.tried()))


def test_words_and_data_get_the_same_answer(at: Counter) -> None:
    found, _ = at.ask_words("box in the small van")
    assert isinstance(found, Answer)
    told = at.ask({"vehicle": making.CAR, "place": making.HOLE, "what": "box"})
    assert told["verdict"] == found.verdict == "goes in"


def test_a_line_that_is_wrong_says_so_and_stops_nothing(at: Counter) -> None:
    lines = [b"{", b"[]", b"\xff", b"  ", b'{"words": "box in the small van"}']
    said = list(at.batch(lines))
    assert [one.get("line") for one in said] == [1, 2, 3, None]
    assert said[-1]["verdict"] == "goes in"


def test_a_place_is_solved_once(at: Counter, monkeypatch: pytest.MonkeyPatch) -> None:
    solved: list[Any] = []
    place_of = desk.place_of  # type: ignore[attr-defined]

    def counted(*key: Any) -> Any:
        solved.append(key)
        return place_of(*key)

    monkeypatch.setattr(desk, "place_of", counted)
    for _ in range(3):
        at.ask_words("box in the small van")
    assert len(solved) == 1
