"""Which notes bind, at which end of what they leave blank, and which are only quoted beside."""

import pytest

from bezelbook.kinds.note.record import AnyNote, Measured, Tried
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.evidence import (
    ANY_CUT,
    UNCUT,
    Evidence,
    evidence_at,
    refused_reading,
    standing_of,
    unreplaced,
    witnesses,
)
from bezelbook.reasoning.mounting import BARE
from tests.reasoning.making import (
    CAR,
    HOLE,
    book,
    measured,
    mount,
    reading,
    record,
    split,
    stack,
    standing,
    tried,
    unit,
    vehicle,
)

SPLIT = {"build": {"values": {"early": {"years": [1, 2]}, "late": {"years": [3]}}}}
EARLY, LATE = (("build", "early"),), (("build", "late"),)
DEPTH = reading("depth", "150 ± 3 mm")


def evidence(*notes: AnyNote) -> Evidence:
    of = book(vehicle(splits=SPLIT), *notes)
    return evidence_at(of, of.vehicles[CAR], HOLE)


def why_weak(note: AnyNote) -> str:
    (beside,) = evidence(note).weak
    return beside.why


def why_aside(*notes: AnyNote) -> dict[str, str]:
    return {beside.note.id: beside.why for beside in evidence(*notes).aside}


def binds(note: AnyNote) -> bool:
    return [one.note for one in evidence(note).standing] == [note]


@pytest.mark.parametrize("sure", ["fitted", "dry-fitted", "measured"])
@pytest.mark.parametrize("verdict", ["goes in", "does not"])
def test_strong_notes_bind(sure: str, verdict: str) -> None:
    assert binds(tried(sure=sure, verdict=verdict))


@pytest.mark.parametrize("sure", ["eyeballed", "told", "worked out"])
def test_weak_notes_are_only_quoted(sure: str) -> None:
    assert why_weak(tried(sure=sure)) == f"only {sure}"


def test_what_was_not_tried_binds_nothing() -> None:
    assert why_weak(tried(verdict="not tried")) == "not tried"


def test_goes_in_if_binds_where_the_condition_is_a_cut_that_was_made() -> None:
    assert binds(tried(verdict="goes in if", cut="one rib", condition="a rib is cut"))


@pytest.mark.parametrize("cut", [None, "nothing"])
def test_goes_in_if_on_any_other_condition_is_only_quoted(cut: str | None) -> None:
    assert (
        why_weak(tried(verdict="goes in if", cut=cut, condition="the duct is moved"))
        == "on a condition: the duct is moved"
    )
    assert why_weak(tried(verdict="goes in if", cut=cut)) == "on a condition: not said which"


@pytest.mark.parametrize("reason", ["depth", "width", "height", "nose", "plug", None])
def test_a_no_for_a_matter_of_room_binds(reason: str | None) -> None:
    assert binds(tried(verdict="does not", reason=reason))


@pytest.mark.parametrize("reason", ["bolt", "circuit", "load", "other", "glass", "grille"])
def test_a_no_for_another_reason_is_no_matter_of_room(reason: str) -> None:
    assert "not a matter of room" in why_weak(tried(verdict="does not", reason=reason))


def test_readings_bind_unless_all_were_read_by_eye() -> None:
    by_eye = reading("width", "182 mm", tool="eye")
    assert why_weak(measured("m", by_eye)) == "read by eye"
    assert binds(measured("m", by_eye, DEPTH))


def test_other_forms_of_note_say_nothing_of_the_room() -> None:
    seen = record("notes", "s", {"form": "seen", "vehicle": CAR, "place": HOLE})
    assert evidence(seen) == Evidence((), (), ())


def test_notes_of_another_place_are_not_evidence_here() -> None:
    assert evidence(tried(place="glovebox")) == Evidence((), (), ())


def test_a_replaced_note_is_set_aside_for_the_one_that_replaces_it() -> None:
    assert why_aside(tried("old"), tried("new", replaces="old")) == {"old": "replaced by new"}


@pytest.mark.parametrize("sure", ["told", "eyeballed", "worked out"])
def test_hearsay_takes_no_notes_place(sure: str) -> None:
    assert why_aside(tried("old"), tried("new", replaces="old", sure=sure)) == {}


def test_a_note_that_looks_mistyped_waits_until_it_is_read_back() -> None:
    slipped = tried("n", sizes={"depth": "6.5 mm"})
    assert "6.5 mm is outside the usual 20 to 220 mm" in why_aside(slipped)["n"]
    assert binds(tried("n", sizes={"depth": "6.5 mm"}, numbers="read back"))


def test_a_note_that_is_both_weak_and_mistyped_waits_too() -> None:
    assert set(why_aside(tried("n", sure="told", sizes={"depth": "6.5 mm"}))) == {"n"}


def blank(**content: object) -> Tried:
    """A note that leaves every axis blank."""
    return tried(**{"mounts": None, "cut": None, "loom": None, "plugs": None} | content)


def test_what_a_yes_leaves_blank_counts_at_the_generous_end() -> None:
    one = standing(book(blank(sure="dry-fitted")), "a-note")
    assert (one.says, one.stack, one.cut, one.loom, one.plugs_on) == ("goes in", None, ANY_CUT, "aside", False)


def test_what_a_no_leaves_blank_counts_at_the_mean_end() -> None:
    one = standing(book(blank(verdict="does not", sure="dry-fitted")), "a-note")
    assert (one.says, one.stack, one.cut, one.loom, one.plugs_on) == ("does not", None, UNCUT, "behind", True)


@pytest.mark.parametrize("verdict", ["goes in", "does not"])
def test_fitted_means_plugs_on(verdict: str) -> None:
    assert standing(book(blank(sure="fitted", verdict=verdict)), "a-note").plugs_on


@pytest.mark.parametrize(("plugs", "on"), [("on", True), ("off", False)])
@pytest.mark.parametrize("verdict", ["goes in", "does not"])
@pytest.mark.parametrize("sure", ["fitted", "dry-fitted"])
def test_what_is_said_of_the_plugs_counts(plugs: str, verdict: str, sure: str, *, on: bool) -> None:
    assert standing(book(tried(plugs=plugs, verdict=verdict, sure=sure)), "a-note").plugs_on == on


def test_what_is_said_counts_as_said() -> None:
    one = standing(book(mount(), tried(mounts=["kit"], cut="one rib", loom="behind")), "a-note")
    assert one.stack is not None
    assert (one.stack.key, one.cut, one.loom) == (("kit",), "one rib", "behind")


def test_a_measuring_note_is_of_the_bare_uncut_opening_with_the_loom_aside_unless_it_says_otherwise() -> None:
    of = book(mount(), measured("m", DEPTH), measured("o", DEPTH, mounts=["kit"], cut="one rib", loom="behind"))
    plain, other = standing(of, "m"), standing(of, "o")
    assert (plain.says, plain.stack, plain.cut, plain.loom) == ("reading", BARE, UNCUT, "aside")
    assert plain.plugs_on is False
    assert (other.stack, other.cut, other.loom) == (stack(of, "kit"), "one rib", "behind")


def builds_of(note: Tried | Measured, **car: object) -> tuple[object, ...]:
    of = book(vehicle(splits=SPLIT, **car), note)
    return standing_of(of, of.vehicles[CAR], note).builds


def test_the_build_is_what_was_said_or_what_the_year_tells_or_any() -> None:
    assert builds_of(tried(splits={"build": "late"})) == (LATE,)
    assert builds_of(tried(year=1)) == (EARLY,)
    assert builds_of(tried(year=5)) == (EARLY, LATE)
    assert builds_of(measured("m", DEPTH)) == (EARLY, LATE)


def test_a_build_that_never_was_leaves_the_build_open() -> None:
    assert builds_of(tried(splits={"build": "early"}), never_built=[{"build": "early"}]) == (LATE,)


def test_an_axis_that_does_not_bear_on_the_room_is_no_part_of_the_build() -> None:
    of = book(vehicle(splits={"audio": split("base", "upgraded", bears_on={"subjects": ["plug"]})}), tried())
    assert standing(of, "a-note").builds == ((),)


def test_an_axis_that_bears_on_one_place_is_part_of_the_build_there_alone() -> None:
    car = vehicle(splits={"build": split("early", "late", bears_on={"places": [HOLE], "subjects": ["room"]})})
    of = book(car, tried(), tried("roof", place="roof"), measured("m", DEPTH))
    every = ((("build", "early"),), (("build", "late"),))
    assert [standing(of, name).builds for name in ("a-note", "m", "roof")] == [every, every, ((),)]


def test_a_mount_that_nobody_knows_is_the_note_s_own() -> None:
    of = book(tried(mounts=["Home made"]), measured("m", DEPTH, mounts=["Home made"]))
    stacks = [standing(of, name).stack for name in ("a-note", "m")]
    assert [one.key for one in stacks if one] == [('"home made" in a-note',), ('"home made" in m',)]


def test_a_note_may_be_read_as_if_it_did_not_say_by_how_much() -> None:
    short = {"verdict": "does not", "reason": "depth", "where": ["left"], "short_by": "5 mm"}
    of = book(tried("spare", where=["left"], to_spare="5 mm"), tried("short", **short), tried("plain"))
    said = {name: standing(of, name) for name in ("spare", "short", "plain")}
    assert {name: one.has_gap for name, one in said.items()} == {"spare": True, "short": True, "plain": False}
    assert not any(one.without_gap.has_gap for one in said.values())


def refused(datum: str | None, of: KnowledgeBase, *mounts: str, **content: object) -> str | None:
    note = measured("m", reading("depth", "150 mm", datum=datum, **content))
    return refused_reading(note.readings[0], stack(of, *mounts))


def test_a_depth_counts_from_the_sub_dash_face_and_through_a_mount_from_its_seat() -> None:
    of = book(mount())
    assert refused("sub-dash face", of) is None
    assert refused("sub-dash face", of, "kit") is None
    assert refused("kit seat", of, "kit") is None


def test_a_depth_from_another_face_is_refused_and_says_which() -> None:
    of = book(mount())
    assert refused(None, of) == "does not say from which face it was measured"
    assert refused("finished bezel face", of) == "was measured from the finished bezel face, not from the sub-dash face"
    assert refused("kit seat", of) == "was measured from the kit seat, not from the sub-dash face"


def test_what_was_read_by_eye_is_refused_whatever_it_is_of() -> None:
    assert refused("sub-dash face", book(), tool="eye") == "was read by eye"
    note = measured("m", reading("width", "182 mm", tool="eye"), reading("width", "182 mm"))
    assert [refused_reading(one, BARE) for one in note.readings] == ["was read by eye", None]


def test_one_job_is_one_witness_and_without_a_tag_one_author_on_one_day_in_one_vehicle() -> None:
    tagged = [
        tried("a", job="j", author="rk"),
        tried("b", job="j", author="tm", date="2026-01-02"),
        tried("c", job="k"),
    ]
    assert witnesses(tagged) == 2
    signed = {"author": "rk", "date": "2026-01-02"}
    assert witnesses([tried("a", **signed), tried("b", **signed)]) == 1
    assert witnesses([tried("a", **signed), tried("b", **signed | {"author": "tm"})]) == 2
    assert witnesses([tried("a", **signed), tried("b", **signed | {"date": "2026-01-03"})]) == 2
    assert witnesses([tried("a", **signed), tried("b", **signed, vehicle="big-van-1")]) == 2
    bench = record("notes", "b", {"form": "bench", "part": "box", **signed})
    assert witnesses([tried("a", **signed), bench]) == 2


def test_notes_that_say_nothing_of_who_and_when_are_one_witness() -> None:
    assert witnesses([tried("a"), tried("b")]) == 1
    assert witnesses([]) == 0
    assert unit().id == "box"


def test_what_another_note_took_the_place_of_is_left_out_and_the_rest_keeps_its_order() -> None:
    first, second, third = tried("a"), tried("b", replaces="a"), tried("c", replaces="long-gone")
    assert unreplaced([third, first, second]) == [third, second]
