from fractions import Fraction
from typing import Any

from bezelbook.kinds.note.record import Measured
from bezelbook.kinds.record import Record
from bezelbook.reasoning.agreement.consensus import Figure
from bezelbook.reasoning.agreement.repeated import Repeated, repeated
from bezelbook.values.words import NINTHS
from tests.reasoning import making

MM = 1_000_000
BUILDS = {"build": making.split("early", "late")}


def deep(named: str, reads: str, *zones: str, **content: Any) -> Measured:
    """One job's depth at the centre, or at some ninths."""
    reading = making.reading("depth", reads, *(zones or ("centre",)), **content.pop("reading", {}))
    return making.measured(named, reading, job=f"job-{named}", **content)


def found(*records: Record) -> tuple[Repeated, ...]:
    book = making.book(*records)
    return repeated(book, making.place(book).evidence.standing)


def test_two_jobs_that_read_the_same_spot_are_told_together() -> None:
    [one] = found(deep("a", "205 ± 2 mm"), deep("b", "203 ± 3 mm"))
    assert (one.same.of, one.same.ninths, one.same.datum) == ("depth", ("centre",), "sub-dash face")
    assert [vote.figure for vote in one.votes] == [
        Figure(Fraction(205 * MM), Fraction(2 * MM)),
        Figure(Fraction(203 * MM), Fraction(3 * MM)),
    ]
    assert not any(vote.house for vote in one.votes)


def test_a_reading_without_a_tolerance_has_the_houses_for_its_tool() -> None:
    """Wire is trusted to 5 mm."""
    [one] = found(deep("a", "205 mm"), deep("b", "203 ± 3 mm"))
    assert [vote.figure.give for vote in one.votes] == [5 * MM, 3 * MM]
    assert [vote.house for vote in one.votes] == [True, False]


def test_what_is_not_the_same_is_not_told_together() -> None:
    plain = deep("a", "205 ± 2 mm")
    kit = making.mount()
    for other in (
        deep("b", "203 ± 2 mm", "left"),
        deep("b", "203 ± 2 mm", reading={"datum": "kit seat"}),
        deep("b", "203 ± 2 mm", loom="behind"),
        deep("b", "203 ± 2 mm", cut="a rib"),
        deep("b", "203 ± 2 mm", mounts=["kit"]),
        deep("b", "203 ± 2 mm", tabs="out"),
    ):
        assert found(plain, other, kit) == (), other


def test_what_cannot_be_told_to_be_the_same_is_left_out() -> None:
    plain = deep("a", "205 ± 2 mm")
    for other in (
        deep("b", "203 ± 2 mm", reading={"tool": "eye"}),
        deep("b", "203 ± 2 mm", reading={"datum": None}),
        deep("b", "203 ± 2 mm", reading={"zones": []}),
        deep("b", "203 ± 2 mm", mounts=["some kit"]),
    ):
        assert found(plain, other, making.tried(), making.unit()) == (), other
    exact = making.shop(tools={"wire": "0 mm"})
    assert found(exact, plain, deep("b", "203 mm")) == ()


def test_two_depths_that_name_no_face_are_not_of_one_thing() -> None:
    assert found(*(deep(name, "205 ± 2 mm", reading={"datum": None}) for name in ("a", "b"))) == ()


def test_what_was_read_by_eye_beside_a_measure_is_left_out() -> None:
    width = making.reading("width", "180 ± 1 mm")
    notes = (
        making.measured(name, width, making.reading("height", "100 ± 1 mm", tool="eye"), job=name)
        for name in ("a", "b")
    )
    assert [one.same.of for one in found(*notes)] == ["width"]


def test_what_follows_a_reading_by_eye_still_counts() -> None:
    eye = making.reading("height", "100 ± 1 mm", tool="eye")
    width = making.reading("width", "180 ± 1 mm")
    some = found(*(making.measured(name, eye, width, job=name) for name in ("a", "b")))
    assert [one.same.of for one in some] == ["width"]


def test_what_was_read_is_told_by_size_then_build_then_spot_then_state() -> None:
    car = making.vehicle(splits=BUILDS)
    early, late = {"splits": {"build": "early"}}, {"splits": {"build": "late"}}
    notes = [
        deep(f"{who}{spot}{build['splits']['build']}{loom}", "205 ± 2 mm", spot, loom=loom, **build)
        for who in ("a", "b")
        for spot, build, loom in (
            ("right", early, "aside"),
            ("left", late, "aside"),
            ("right", early, "behind"),
            ("left", early, "aside"),
        )
    ]
    told = [(one.same.build[0][1], *one.same.ninths, one.same.loom) for one in found(car, *notes)]
    expected = [
        ("early", "left", "aside"),
        ("early", "right", "aside"),
        ("early", "right", "behind"),
        ("late", "left", "aside"),
    ]
    assert told == expected
    assert [(one.same.build[0][1], *one.same.ninths, one.same.loom) for one in found(car, *notes[::-1])] == expected


def test_a_reading_of_nobody_knows_which_build_is_left_out() -> None:
    car = making.vehicle(splits=BUILDS)
    for build in ("early", "late"):
        known, blank = deep("a", "205 ± 2 mm", splits={"build": build}), deep("b", "203 ± 2 mm")
        assert found(car, known, blank) == ()
        [one] = found(car, known, deep("b", "203 ± 2 mm", splits={"build": build}))
        assert one.same.build == (("build", build),)


def test_one_job_is_one_vote_however_often_it_read() -> None:
    """Together its readings allow 201 to 208 mm."""
    twice = making.measured(
        "a", making.reading("depth", "205 ± 3 mm", "centre"), making.reading("depth", "203 ± 2 mm", "centre"), job="one"
    )
    assert found(twice) == ()
    assert found(deep("a", "205 ± 3 mm", author="rk"), twice.model_copy(update={"id": "c", "job": "job-a"})) == ()
    [one] = found(twice, deep("b", "203 ± 2 mm"))
    assert one.votes[0].figure == Figure(Fraction(409 * MM, 2), Fraction(7 * MM, 2))
    assert one.votes[0].values == (Fraction(205 * MM), Fraction(203 * MM))


def test_without_a_job_an_author_and_a_day_are_one() -> None:
    same = {"author": "rk", "date": "2026-03-05"}
    one, other = (making.measured(name, making.reading("width", "180 ± 1 mm"), **same) for name in "ab")
    assert found(one, other) == ()
    later = making.measured("c", making.reading("width", "181 ± 1 mm"), author="rk", date="2026-03-06")
    assert len(found(one, later)) == 1


def test_spots_of_which_the_same_readings_tell_are_told_once() -> None:
    [one] = found(deep("a", "205 ± 2 mm", "centre", "left"), deep("b", "203 ± 2 mm", "left", "centre"))
    assert one.same.ninths == ("left", "centre")
    [everywhere] = found(*(making.measured(n, making.reading("depth", "205 ± 2 mm"), job=n) for n in ("a", "b")))
    assert everywhere.same.ninths == NINTHS


def test_spots_of_which_other_readings_tell_are_told_apart_in_their_order() -> None:
    some = found(
        deep("a", "205 ± 2 mm", "lower", "centre"), deep("b", "203 ± 2 mm", "centre"), deep("c", "9 in", "lower")
    )
    assert [one.same.ninths for one in some] == [("centre",), ("lower",)]


def test_a_width_has_no_face_no_loom_and_no_ninths() -> None:
    one, other = (making.measured(name, making.reading("width", "180 ± 1 mm"), job=name) for name in ("a", "b"))
    [same] = found(one.model_copy(update={"loom": "behind"}), other)
    assert (same.same.ninths, same.same.datum, same.same.loom) == ((), None, None)


def test_what_follows_a_reading_of_no_tolerance_still_counts() -> None:
    exact = making.shop(tools={"wire": "0 mm"})
    depth, width = making.reading("depth", "203 mm", "centre"), making.reading("width", "180 ± 1 mm")
    some = found(exact, *(making.measured(name, depth, width, job=name) for name in ("a", "b")))
    assert [one.same.of for one in some] == ["width"]


def test_a_width_is_one_thing_from_whichever_face_somebody_says() -> None:
    faces = {"a": {"datum": "sub-dash face"}, "b": {"datum": "kit seat"}}
    notes = (making.measured(n, making.reading("width", "180 ± 1 mm", **face), job=n) for n, face in faces.items())
    [one] = found(*notes)
    assert one.same.datum is None


def test_spots_come_in_the_order_of_the_opening_and_states_in_theirs() -> None:
    notes = [
        deep(f"{who}{number}", "205 ± 2 mm", spot, loom=loom)
        for who in ("a", "b")
        for number, (spot, loom) in enumerate((("lower", "aside"), ("right", "behind"), ("right", "aside")))
    ]
    told = [(*one.same.ninths, one.same.loom) for one in found(*notes)]
    assert told == [("right", "aside"), ("right", "behind"), ("lower", "aside")]
