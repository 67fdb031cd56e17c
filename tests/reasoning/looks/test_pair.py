from typing import Any

from bezelbook.kinds.record import Record
from bezelbook.reasoning.looks.pair import Pair, is_firm, open_pairs, pairs_at, put, times_asked
from bezelbook.reasoning.needs import needs_of_unit
from bezelbook.reasoning.question import Question
from bezelbook.reasoning.question import asked as asked_of
from bezelbook.reasoning.room import Place
from bezelbook.reasoning.verdict import judge, viable
from tests.reasoning import making

BUILD: dict[str, Any] = {"values": {"early": {}, "late": {}}}
LATE = (("build", "late"),)


def pair(unit: str = "box", **more: Any) -> Pair:
    return Pair(**{"vehicle": making.CAR, "place": making.HOLE, "build": (), "unit": unit} | more)


def firm(place: Place, one: Pair) -> bool:
    return is_firm(put(place, one), place.accounts)


def asked(named: str, **content: Any) -> Record:
    said = {"words": "will it go in", "vehicle": making.CAR, "place": making.HOLE} | content
    made: Record = making.record("questions", named, {key: one for key, one in said.items() if one is not None})
    return made


def test_every_unit_in_every_build_is_a_pair() -> None:
    base = making.book(making.vehicle(splits={"build": BUILD}), making.unit(), making.unit("deep"))
    assert [(dict(one.build)["build"], one.unit) for one in pairs_at(making.place(base))] == [
        ("early", "box"),
        ("early", "deep"),
        ("late", "box"),
        ("late", "deep"),
    ]


def test_what_went_in_is_firm_and_what_nobody_tried_is_open() -> None:
    deep = making.unit("deep", body_depth="200 ± 1 mm caliper")
    place = making.place(making.book(making.unit(), deep, making.tried()))
    assert firm(place, pair())
    assert [one.unit for one in open_pairs(place)] == ["deep"]


def test_what_does_not_go_in_is_firm_too() -> None:
    no = making.tried(verdict="does not", reason="depth", sure="dry-fitted")
    assert firm(making.place(making.book(making.unit(), no)), pair())


def test_what_is_argued_over_is_open() -> None:
    no = making.tried("no", verdict="does not", reason="depth")
    base = making.book(making.unit(), making.tried("yes"), no)
    place = making.place(base)
    assert not firm(place, pair())
    assert [is_firm(put(place, pair()), [rooms]) for rooms in place.accounts] == [True, True]


def test_it_is_firm_exactly_when_the_answer_is() -> None:
    units = [making.unit(f"u{depth}", body_depth=f"{depth} ± 1 mm caliper") for depth in (90, 110, 130, 150, 170)]
    notes = [
        making.tried("a", what="u110", mounts=["kit"]),
        making.tried("b", what="u150", verdict="does not", reason="depth", mounts=["kit"]),
        making.tried("c", what="u130", mounts="none", plugs="off"),
        making.roomy(),
    ]
    base = making.book(making.mount(), *units, *notes)
    place = making.place(base)
    answered = {}
    for unit in base.head_units:
        question = asked_of(place.frame, place.evidence, Question(making.CAR, making.HOLE, unit=unit))
        answered[unit] = judge(place, viable(place, question)).verdict in ("goes in", "does not")
    assert {unit: firm(place, pair(unit)) for unit in base.head_units} == answered
    assert set(answered.values()) == {True, False}


def test_other_needs_may_stand_in_for_the_unit_s_own() -> None:
    base = making.book(making.unit(body_depth=None), making.unit("small"), making.tried(what="small"))
    place = making.place(base)
    assert not firm(place, pair())
    small = put(place, pair()).narrowed(needs=needs_of_unit(base, base.head_units["small"]))
    assert is_firm(small, place.accounts)


def test_a_mounting_that_cannot_take_it_is_no_way_that_is_left() -> None:
    here = [{"vehicle": making.CAR, "place": making.HOLE}]
    flush, other = making.mount("a", made_for=here), making.mount("b", proud="20 ± 1 mm caliper", made_for=here)
    no = making.tried(verdict="does not", reason="depth", mounts=["a"])
    place = making.place(making.book(flush, other, making.unit(), no))
    [question] = open_pairs(place).values()
    assert [stack.key for stack in put(place, pair()).stacks] == [("a",), ("b",)]
    assert [stack.key for stack in question.stacks] == [("b",)]


def test_a_question_counts_as_often_as_it_was_asked() -> None:
    questions = [
        asked("any", times=2),
        asked("this", times=3, what="box"),
        asked("other", times=5, what="deep"),
        asked("words", times=7, what="something else"),
        asked("elsewhere", times=11, place="shelf"),
        asked("nowhere", times=13, place=None),
        asked("early", times=17, splits={"build": "early"}),
        asked("late", times=19, splits={"build": "late"}),
        asked("trim", times=23, splits={"trim": "basic"}),
    ]
    base = making.book(making.unit(), making.unit("deep"), *questions)
    assert times_asked(base, pair(build=LATE)) == 2 + 3 + 19 + 23
    assert times_asked(base, pair("deep", build=LATE)) == 2 + 5 + 19 + 23
    assert times_asked(base, pair(vehicle="other-van")) == 0
