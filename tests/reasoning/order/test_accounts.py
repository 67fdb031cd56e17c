from typing import Any

from bezelbook.kinds.record import Record
from bezelbook.reasoning.decided import decided
from bezelbook.reasoning.order.accounts import Accounts, accounts_of, oldest_first
from tests.reasoning import making
from tests.reasoning.order import trim

BUILD = {"values": {"early": {"years": [1, 2]}, "late": {"years": [2, 3]}}}


def accounts(*records: Record) -> Accounts:
    written = trim.book(trim.car("strip", splits={"build": BUILD}), *records)
    base = decided(written, written.decisions.values())
    return accounts_of(base, base.vehicles[making.CAR])


def note(named: str, **content: Any) -> Record:
    return trim.seen(named, **({"pieces": ["strip"]} | content))


def counting(found: Accounts) -> list[str]:
    return [one.note.id for one in found.counting]


def decision(**content: Any) -> Record:
    made: Record = making.record(
        "decisions", "settled", {"question": "which", "decided": "one stands", "reason": "seen"} | content
    )
    return made


def test_a_note_counts_when_it_tells_of_anything_that_comes_off() -> None:
    tell: dict[str, dict[str, Any]] = {
        "a": {"lies_over": [trim.over("lid", "strip")]},
        "b": {"shares_screw": ["lid", "strip"]},
        "c": {"hidden": "One screw."},
        "d": {"fasteners": ["clip"]},
        "e": {"pieces": ["strip"]},
        "silent": {"words": "Nothing to see."},
    }
    notes = [trim.seen(name, **said) for name, said in tell.items()]
    job = making.record(
        "jobs", "soon", {"tag": "soon", "vehicle": making.CAR, "wishes": [{"want": "add", "what": "box"}]}
    )
    found = accounts(*notes, job, making.tried(), trim.seen("elsewhere", vehicle="other", pieces=["strip"]))
    assert counting(found) == ["a", "b", "c", "d", "e"]
    assert found.aside == ()


def test_the_oldest_comes_first_and_one_without_a_date_last() -> None:
    found = accounts(
        note("c", date="2026-01-01"), note("a"), note("b", date="2025-12-31"), note("d", date="2026-01-01")
    )
    assert counting(found) == ["b", "c", "d", "a"]
    assert oldest_first(found.counting[-1].note) > oldest_first(found.counting[0].note)


def test_a_note_that_was_replaced_is_set_aside() -> None:
    found = accounts(note("old"), note("new", replaces="old"))
    assert counting(found) == ["new"]
    assert [(one.note.id, one.why) for one in found.aside] == [("old", "replaced by new")]


def test_hearsay_replaces_nothing_and_no_note_replaces_itself() -> None:
    told = making.tried("told", sure="told", replaces="a")
    assert counting(accounts(note("a"), note("b", replaces="b"), told)) == ["a", "b"]
    strong = making.tried("strong", sure="fitted", replaces="a")
    assert counting(accounts(note("a"), note("b"), strong)) == ["b"]


def test_a_note_that_was_struck_is_set_aside_with_the_reason() -> None:
    found = accounts(note("a"), note("b"), decision(struck=[{"note": "b", "because": "Another car."}]))
    assert counting(found) == ["a"]
    assert [(one.note.id, one.why) for one in found.aside] == [("b", "struck: Another car.")]


def test_a_blank_split_may_be_either_and_says_so() -> None:
    [one] = accounts(note("a")).counting
    assert one.may_be((("build", "early"),))
    assert one.may_be((("build", "late"),))
    assert one.leaves_open((("build", "early"),)) == ("build",)


def test_a_split_that_is_said_or_that_the_year_implies_is_no_other() -> None:
    ways: tuple[dict[str, Any], ...] = ({"splits": {"build": "early"}}, {"year": 1})
    for said in ways:
        [one] = accounts(note("a", **said)).counting
        assert one.may_be((("build", "early"),))
        assert not one.may_be((("build", "late"),))
        assert one.leaves_open((("build", "early"),)) == ()
    [both] = accounts(note("a", year=2)).counting
    assert both.may_be((("build", "late"),))


def test_a_decision_on_how_a_note_is_read_fills_a_blank_and_changes_nothing_else() -> None:
    as_late = decision(
        decided="both true",
        read_as=[
            {"note": "a", "splits": {"build": "late"}},
            {"note": "b", "plugs": "on"},
            {"note": "b", "year": 1},
            {"note": "c", "year": 1},
        ],
    )
    found = accounts(note("a"), note("b"), note("c", splits={"build": "late"}), note("d", year=3), as_late)
    assert {one.note.id: dict(one.known) for one in found.counting} == {
        "a": {"build": "late"},
        "b": {"build": "early"},
        "c": {"build": "late"},
        "d": {"build": "late"},
    }


def test_what_was_struck_and_tells_of_no_piece_is_nothing_to_the_order() -> None:
    found = accounts(note("a"), making.tried(), decision(struck=[{"note": "a-note", "because": "Never tried."}]))
    assert (counting(found), found.aside) == (["a"], ())
