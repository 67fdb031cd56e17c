from typing import Any

from bezelbook.kinds.note.record import Measured
from bezelbook.kinds.record import Record
from bezelbook.reasoning.agreement.beside_answer import apart_unknowns
from bezelbook.reasoning.question import Question, asked
from bezelbook.reasoning.unknowns import Missing
from tests.reasoning import making


def deep(named: str, reads: str, **content: Any) -> Measured:
    reading = making.reading("depth", reads, "centre")
    return making.measured(named, reading, job=f"job-{named}", author=named, date="2026-03-05", **content)


def unknown(*records: Record, **splits: str) -> tuple[Missing, ...]:
    place = making.place(making.book(making.unit(), *records))
    return apart_unknowns(
        place, asked(place.frame, place.evidence, Question(making.CAR, making.HOLE, splits, unit="box"))
    )


THREE = tuple(deep(name, "205 ± 4 mm") for name in ("a", "b", "c"))


def test_readings_that_agree_leave_nothing_unknown() -> None:
    assert unknown(*THREE) == ()


def test_one_that_stands_apart_is_named_with_where_to_look_first() -> None:
    [one] = unknown(*THREE, deep("e", "195 ± 4 mm"))
    assert one.what.startswith("depth at the centre from the sub-dash face: 3 jobs agree: 205 mm")
    assert "One stands apart: 195 mm (7.68 in) ± 4 mm (e, 2026-03-05)" in one.what
    assert one.look == "read it again; look first at the face it was read from: it says sub-dash face"


def test_everything_to_look_at_first_is_named() -> None:
    taped = making.measured("e", making.reading("depth", "195 ± 4 mm", "centre", tool="tape"), job="e")
    [one] = unknown(*THREE, taped)
    assert one.look == (
        "read it again; look first at its tool: tape, where the others used wire; "
        "the face it was read from: it says sub-dash face"
    )


def test_where_nothing_is_singled_out_it_is_to_be_read_again() -> None:
    [one] = unknown(deep("a", "205 ± 2 mm"), deep("b", "202 ± 2 mm"))
    assert one.look == "read it again"
    assert "do not agree" in one.what


def test_another_build_is_not_asked_about() -> None:
    car = making.vehicle(splits={"build": making.split("early", "late")})
    late = {"splits": {"build": "late"}}
    notes = deep("a", "205 ± 2 mm", **late), deep("b", "202 ± 2 mm", **late)
    assert unknown(car, *notes, build="early") == ()
    assert len(unknown(car, *notes, build="late")) == len(unknown(car, *notes)) == 1


def test_it_changes_no_verdict_and_stands_among_the_unknowns() -> None:
    """The two readings can both be true within their ±, so that the law takes both; yet they are far apart for it."""
    firm = [making.unit(), making.roomy(), making.measured("deep", making.reading("depth", "250 ± 2 mm"))]
    apart = making.measured("other", making.reading("depth", "253 ± 2 mm"), job="another")
    plain, told = (making.ask(making.book(*firm, *more), "box") for more in ((), (apart,)))
    assert plain.verdict == told.verdict == "goes in"
    assert [one.changes for one in told.unknown if one not in plain.unknown] == ["which of these readings is right"]
