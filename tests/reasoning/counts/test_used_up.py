from typing import Any

from bezelbook.kinds.note.record import After
from bezelbook.kinds.record import Record
from bezelbook.reasoning.counts.used_up import UsedUp, used_up
from tests.reasoning import making
from tests.reasoning.making import CAR, HOLE

ROPE = making.record("supplies", "rope", {"name": "Butyl rope", "form": "tape", "tape_kind": "butyl"})


def after(named: str, *used: str | dict[str, Any], **content: Any) -> After:
    said = {"form": "after", "vehicle": CAR, "place": HOLE, "used": list(used), "author": named, "date": "2026-01-02"}
    made: After = making.record("notes", named, said | content)
    return made


def found(*notes: After, records: tuple[Record, ...] = (ROPE,)) -> dict[str, UsedUp]:
    return {one.what: one for one in used_up(making.book(*records, *notes), notes)}


def test_each_thing_says_how_much_a_job_took() -> None:
    notes = (
        after("a", {"what": "rope", "length": "0.3 m"}, {"what": "ties", "count": 8}),
        after("b", {"what": "Butyl rope", "length": "1 m"}, {"what": "Ties", "count": 3}, "ties again"),
        after("c", {"what": "ties", "count": 5}),
    )
    all_of_it = found(*notes)
    assert [*all_of_it] == ["rope", "ties", "ties again"]
    assert all_of_it["rope"].words("mm") == "300 mm (11.81 in) to 1000 mm (39.37 in)"
    assert all_of_it["ties"].words("mm") == "3 to 8"
    assert all_of_it["ties again"].words("mm") == "how much is not looked"
    assert [one.jobs for one in all_of_it.values()] == [2, 3, 1]
    assert all_of_it["rope"].name == "Butyl rope"


def test_pieces_and_length_may_both_be_said_and_one_size_is_no_span() -> None:
    both = found(after("a", {"what": "rope", "count": 2, "length": "1 in"}))["rope"]
    assert both.words("in") == "2 and 1 in (25.4 mm)"


def test_a_copied_job_counts_once() -> None:
    tag = {"job": "jan-02-bay-1"}
    rope = {"what": "rope", "length": "0.3 m"}
    assert found(after("a", rope, **tag), after("b", rope, **tag))["rope"].jobs == 1
    assert found(after("a", rope, **tag), after("b", rope, place="x", **tag))["rope"].jobs == 2
