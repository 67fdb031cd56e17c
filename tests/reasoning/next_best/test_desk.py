from collections.abc import Callable
from typing import Any

import pytest

from bezelbook.reasoning.answer import answer
from bezelbook.reasoning.next_best import desk
from bezelbook.reasoning.question import Question
from bezelbook.reasoning.speakers.question import SpeakerQuestion
from tests.reasoning import making
from tests.reasoning.speakers import doors


def question(unit: str = "deep") -> Question:
    return Question(making.CAR, making.HOLE, unit=unit)


def test_all_but_the_offers_is_the_plain_answer() -> None:
    base = making.book(making.unit("deep"), making.unit(body_depth="90 ± 1 mm caliper"), making.tried())
    found = desk.Desk(base).opening(question()).plain()
    plainly = answer(base, question()).plain()
    assert found["instead"]
    assert {key: one for key, one in found.items() if key != "instead"} == {
        key: one for key, one in plainly.items() if key != "instead"
    }


def test_a_speaker_is_asked_about_at_the_same_desk() -> None:
    found = desk.Desk(doors.book(doors.roomy())).speaker(SpeakerQuestion(doors.CAR, doors.DOOR, speaker="six"))
    assert (found.verdict, found.instead) == ("goes in", ())


def test_forgetting_what_was_answered_changes_nothing(monkeypatch: pytest.MonkeyPatch) -> None:
    units = [making.unit(f"u{depth}", body_depth=f"{depth} ± 1 mm caliper") for depth in (90, 100, 110, 200)]
    base = making.book(*units, making.tried(what="u110"))
    whole = desk.Desk(base).opening(question("u200"))
    monkeypatch.setattr(desk, "MOST_KEPT", 1)
    assert desk.Desk(base).opening(question("u200")).instead == whole.instead != ()


def told_when(monkeypatch: pytest.MonkeyPatch, name: str, tell: Callable[..., None]) -> None:
    """Have somebody told whenever the desk works something out."""
    plain: Callable[..., Any] = getattr(desk, name)

    def telling(*at: Any) -> Any:
        tell(*at)
        return plain(*at)

    monkeypatch.setattr(desk, name, telling)


def test_each_place_is_worked_out_once_however_often_it_is_asked_about(monkeypatch: pytest.MonkeyPatch) -> None:
    worked_out: list[str] = []
    for name in ("place_of", "speaker_place_of"):
        told_when(monkeypatch, name, lambda *at: worked_out.append(at[-1]))
    one = desk.Desk(making.book(making.unit("deep"), making.unit("short"), making.tried(what="short")))
    assert [one.opening(question(unit)).verdict for unit in ("deep", "short")] == ["nobody has tried", "goes in"]
    other = desk.Desk(doors.book(doors.roomy(), doors.speaker("slim")))
    for speaker in ("six", "slim"):
        other.speaker(SpeakerQuestion(doors.CAR, doors.DOOR, speaker=speaker))
    assert worked_out == [making.HOLE, doors.DOOR]


@pytest.mark.parametrize(("most", "again"), [(2, []), (1, ["u100", "u90"])])
def test_no_more_answers_are_kept_than_are_meant_to_be(
    monkeypatch: pytest.MonkeyPatch, most: int, again: list[str]
) -> None:
    answered: list[str] = []
    told_when(monkeypatch, "answer", lambda _, put, __: answered.append(put.unit))
    monkeypatch.setattr(desk, "MOST_KEPT", most)
    units = [making.unit(f"u{depth}", body_depth=f"{depth} ± 1 mm caliper") for depth in (90, 100, 200)]
    one = desk.Desk(making.book(*units, making.tried(what="u100")))
    assert one.opening(question("u200")) == one.opening(question("u200"))
    assert answered == ["u200", "u100", "u90", "u200", *again]


def test_what_was_offered_once_is_offered_again() -> None:
    base = making.book(making.unit("deep"), making.unit(body_depth="90 ± 1 mm caliper"), making.tried())
    one = desk.Desk(base)
    assert one.opening(question()).instead == one.opening(question()).instead != ()
