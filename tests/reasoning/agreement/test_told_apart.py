from typing import Any

from bezelbook.kinds.note.record import Measured
from bezelbook.kinds.record import Record
from bezelbook.reasoning.agreement.told_apart import Told, told_apart, vote_words
from bezelbook.reasoning.evidence import evidence_at
from tests.reasoning import making

GAUGE = {"tool": "depth gauge"}


def deep(named: str, reads: str, **content: Any) -> Measured:
    """One job's depth at the centre."""
    reading = making.reading("depth", reads, "centre", **{**GAUGE, **content.pop("reading", {})})
    note = {"job": f"job-{named}", "author": named, "date": "2026-03-05", **content}
    return making.measured(named, reading, **note)


def told(*records: Record, place: str = making.HOLE) -> tuple[Told, ...]:
    book = making.book(*records)
    return told_apart(book, evidence_at(book, book.vehicles[making.CAR], place).standing)


FOUR = tuple(deep(name, "205 ± 4 mm") for name in ("a", "b", "c", "d"))


def test_four_agree_and_the_fifth_is_named_with_where_to_look_first() -> None:
    """By hand: four of one ± come to half of it; common practice, no source."""
    [one] = told(*FOUR, deep("e", "188 mm", reading={"tool": "tape"}))
    assert one.what == "depth at the centre from the sub-dash face"
    assert one.comes_to == "205 mm (8.07 in) ± 2 mm"
    assert (
        one.says == "4 jobs agree: 205 mm (8.07 in) ± 2 mm. One stands apart: 188 mm (7.40 in) ± 3 mm (e, 2026-03-05)"
    )
    assert one.look_first == (
        "its tool: tape, where the others used depth gauge",
        "the face it was read from: it says sub-dash face",
        "its ±: nobody typed one, so the house's for the tool stands",
    )


def test_jobs_that_agree_say_what_they_come_to() -> None:
    [one] = told(*FOUR)
    assert one.says == "4 jobs agree: 205 mm (8.07 in) ± 2 mm"
    assert (one.look_first, one.repeats) == ((), "")


def test_two_that_do_not_agree_are_both_quoted() -> None:
    [one] = told(deep("a", "205 ± 2 mm"), deep("b", "190 ± 2 mm", date=None, author=None))
    assert one.says == (
        "2 jobs do not agree: 205 mm (8.07 in) ± 2 mm (a, 2026-03-05) and 190 mm (7.48 in) ± 2 mm (not signed, no date)"
        ". They lie further apart than their ± explains, and nothing singles one out; until somebody reads it again, "
        f"reckon with {one.comes_to}"
    )
    assert one.comes_to.startswith("197.5 mm (7.78 in) ± 15")
    assert one.look_first == ()


def test_of_several_that_do_not_agree_the_furthest_apart_are_named() -> None:
    readings = {"a": "205 ± 2 mm", "b": "206 ± 2 mm", "c": "190 ± 2 mm", "d": "189 ± 2 mm"}
    [one] = told(*(deep(name, reads) for name, reads in readings.items()))
    assert "Furthest apart are 206 mm (8.11 in) and 189 mm (7.44 in), and all together they lie further" in one.says
    [inches] = told(
        making.shop(units_first="in"),
        *(
            deep(name, reads)
            for name, reads in {"a": "8 ± 0.1 in", "b": "8 ± 0.1 in", "c": "7 ± 0.1 in", "d": "7 ± 0.1 in"}.items()
        ),
    )
    assert ". Furthest apart are 8 in (203.2 mm) and 7 in (177.8 mm), and all" in inches.says


def test_what_it_met_is_compared_where_both_say() -> None:
    rest = tuple(deep(name, "205 ± 4 mm", reading={"hits": "beam"}) for name in ("a", "b", "c"))
    [one] = told(*rest, deep("e", "188 ± 3 mm", reading={"hits": "carpet"}))
    assert one.look_first[0] == "what it met: carpet, where the others met beam"
    [same] = told(*rest, deep("e", "188 ± 3 mm", reading={"hits": "beam"}))
    assert same.look_first == ("the face it was read from: it says sub-dash face",)


def test_a_tool_that_nobody_named_is_said() -> None:
    [one] = told(*FOUR, deep("e", "188 ± 3 mm", reading={"tool": None}))
    assert one.look_first[0] == "its tool: no tool named, where the others used depth gauge"


def test_a_width_apart_may_be_of_the_bezel() -> None:
    rest = tuple(making.measured(name, making.reading("width", "182 ± 1 mm"), job=name) for name in ("a", "b", "c"))
    [one] = told(*rest, making.measured("e", making.reading("width", "176 ± 1 mm"), job="e"))
    assert one.what == "width"
    assert one.look_first == ("whether it was read across the sub-dash and not across the finished bezel",)


def test_a_build_that_only_the_year_tells_is_doubted() -> None:
    values = {"early": {"years": [1]}, "late": {"years": [2, 3]}}
    car = making.vehicle(splits={"build": {"values": values}})
    late = {"splits": {"build": "late"}}
    rest = tuple(deep(name, "205 ± 4 mm", **late) for name in ("a", "b", "c"))
    [one] = told(car, *rest, deep("e", "188 ± 3 mm", year=2))
    assert one.what.endswith(", late")
    assert one.look_first[-1] == "which build that car was: only its model year says so"
    [said] = told(car, *rest, deep("e", "188 ± 3 mm", year=2, **late))
    [only_one] = told(*FOUR, deep("e", "188 ± 3 mm", year=2))
    assert not [look for look in (*said.look_first, *only_one.look_first) if look.startswith("which build")]


def test_the_state_is_part_of_what_was_read() -> None:
    state = {"cut": "a rib", "loom": "behind", "mounts": ["kit", "sleeve"], "tabs": "out"}
    parts = (making.mount(), making.mount("sleeve"))
    [one] = told(*parts, *(deep(name, "205 ± 4 mm", **state) for name in ("a", "b")))
    stack = "through kit and sleeve"
    assert one.what == f"depth at the centre from the sub-dash face, {stack}, tabs out, a rib cut, loom behind"
    [whole] = told(*(making.measured(name, making.reading("depth", "205 mm"), job=name) for name in ("a", "b")))
    assert whole.what == "depth everywhere from the sub-dash face"


def test_what_one_job_read_twice_tells_how_far_it_repeats() -> None:
    """By hand: 204 and 206 have a variance of 2; with 205 once, the groups lie no further apart than that."""
    twice = making.measured(
        "a", *(making.reading("depth", f"{mm} ± 2 mm", "centre") for mm in (204, 206)), job="a", author="a"
    )
    [one] = told(twice, deep("b", "205 ± 2 mm"))
    assert one.repeats == "read again within a job: 1.4 mm (one standard deviation); from job to job: no more than that"
    [other] = told(twice, deep("b", "215 ± 2 mm"))
    assert other.repeats.startswith("read again within a job: 1.4 mm (one standard deviation); from job to job: ")
    assert other.repeats.endswith(" mm more")


def test_a_place_for_a_speaker_is_told_like_an_opening() -> None:
    door = {"kind": "door lower", "side": "left"}
    car = making.vehicle(places={making.HOLE: {"kind": "plain opening", "side": "centre"}, "door": door})
    notes = (
        making.measured(
            name,
            {"of": "rear depth to fixed", "reads": "70 ± 2 mm", "datum": "door metal", "tool": "depth gauge"},
            place="door",
            job=name,
        )
        for name in ("a", "b")
    )
    [one] = told(car, *notes, place="door")
    assert one.what == "rear depth to fixed from the door metal"


def test_a_vote_is_quoted_with_who_and_when() -> None:
    [one] = told(*FOUR)
    assert vote_words(one.repeated.votes[0], "in") == "8.07 in (205 mm) ± 4 mm (a, 2026-03-05)"
