"""How notes bind at a place for a speaker."""

from typing import Any

import pytest

from bezelbook.kinds.note.record import Measured, Tried
from bezelbook.reasoning.evidence import ANY_CUT
from bezelbook.reasoning.speakers.evidence import SpeakerStanding, refused_reading, seat_of
from bezelbook.reasoning.speakers.stacks import BARE, stack_of
from tests.reasoning.making import record, unit
from tests.reasoning.speakers.doors import (
    BUILDS,
    DOOR,
    DOORS,
    OTHER,
    book,
    car,
    foam,
    measured,
    mount,
    place,
    reading,
    tried,
)


def standing(*records: Any, where: str = DOOR) -> SpeakerStanding:
    [one] = place(book(*records), where).evidence.standing
    return one


def test_a_yes_that_leaves_things_blank_is_read_generously() -> None:
    one = standing(tried(cut=None, glass=None, mounts=None))
    assert (one.says, one.cut, one.tabs, one.glass, one.stack) == ("goes in", ANY_CUT, "out", "up", None)


def test_a_no_that_leaves_things_blank_is_read_at_the_mean_end() -> None:
    one = standing(tried(verdict="does not", cut=None, glass=None))
    assert (one.says, one.cut, one.tabs, one.glass) == ("does not", "nothing", "in", "run")
    assert standing(tried(verdict="does not", glass="up")).glass == "up"


@pytest.mark.parametrize(
    ("sure", "glass", "run"),
    [("fitted", "down", "run"), ("dry-fitted", "down", "run"), ("measured", "down", "up"), ("fitted", "up", "up")],
)
def test_whoever_fitted_it_ran_the_glass_if_he_says_that_it_was_down(sure: str, glass: str, run: str) -> None:
    assert standing(tried(sure=sure, glass=glass)).glass == run


def test_an_unsaid_gasket_may_be_any_of_the_book() -> None:
    unsaid = standing(tried(gasket=None), foam()).stack
    said = standing(tried(gasket="foam"), foam()).stack
    assert unsaid is not None
    assert said is not None
    assert (unsaid.key, said.key) == (("+ not said in n",), ("+ foam",))
    assert unsaid.offset.high == 2_000_001
    assert standing(tried(gasket=None)).stack == BARE


def test_what_was_cut_of_a_mount_s_tabs_is_not_cut_of_the_car() -> None:
    assert standing(tried(cut="the tabs, for good", tabs="out")).cut == "nothing"
    assert standing(tried(cut="the tabs, for good")).cut == "the tabs, for good"
    assert standing(tried(cut="a rib", tabs="out")).cut == "a rib"


@pytest.mark.parametrize(
    ("content", "why"),
    [
        ({"verdict": "not tried"}, "not tried"),
        ({"sure": "told"}, "only told"),
        ({"verdict": "goes in if", "condition": "gently"}, "on a condition: gently"),
        ({"verdict": "goes in if", "cut": None}, "on a condition: not said which"),
        ({"verdict": "does not", "reason": "bolt"}, "did not go in because of bolt, which is not a matter of room"),
    ],
)
def test_what_binds_nothing_is_quoted_with_its_reason(content: dict[str, str], why: str) -> None:
    [one] = place(book(tried(**content))).evidence.weak
    assert one.why == why


def test_a_condition_that_is_a_cut_or_tabs_is_a_state() -> None:
    assert standing(tried(verdict="goes in if", tabs="out")).says == "goes in"
    assert standing(tried(verdict="goes in if", cut="a rib")).says == "goes in"


def test_readings_by_eye_bind_nothing() -> None:
    by_eye = measured("m", reading("front clearance", "20 mm", tool="eye"))
    [one] = place(book(by_eye)).evidence.weak
    assert one.why == "read by eye"


def test_a_replaced_note_waits() -> None:
    found = place(book(tried("old"), tried("new", replaces="old"))).evidence
    assert [(one.note.id, one.why) for one in found.aside] == [("old", "replaced by new")]


def test_notes_about_head_units_and_openings_are_not_about_speakers() -> None:
    box = tried(what="box", place="seat")
    depth = measured("m", reading("depth", "100 mm"), place="seat")
    seen = record("notes", "s", {"form": "seen", "vehicle": "van-1", "place": "seat"})
    found = place(book(unit(), box, depth, seen), "seat").evidence
    assert (found.standing, found.weak) == ((), ())


@pytest.mark.parametrize(("said", "count"), [("measured the same", 1), ("assumed the same", 0), ("not the same", 0)])
def test_only_what_was_measured_the_same_is_read_on_the_other_side(said: str, count: int) -> None:
    one = measured("m", reading("front clearance", "20 ± 1 mm"), other_side=said)
    assert len(place(book(one), OTHER).evidence.standing) == count


def test_a_place_that_the_vehicle_does_not_list_has_its_notes_too() -> None:
    assert len(place(book(tried(place="boot"), car(places=DOORS)), "boot").evidence.standing) == 1


@pytest.mark.parametrize(
    ("content", "mounts", "shape", "why"),
    [
        ({}, (), None, None),
        ({"tool": "eye"}, (), None, "was read by eye"),
        ({"datum": None}, (), None, "does not say from which face it was measured"),
        ({"datum": "bracket seat"}, (), None, "was measured from the bracket seat, not from the door metal"),
        ({"datum": "bracket seat"}, ("ring",), None, None),
        ({"of": "cut-out", "datum": None}, (), "round", None),
        ({"of": "cut-out"}, (), "oval", "does not say which way of the oval hole it is"),
        ({"of": "cut-out long way", "datum": None}, (), "oval", None),
    ],
)
def test_which_readings_cannot_be_compared(
    content: dict[str, Any], mounts: tuple[str, ...], shape: str | None, why: str | None
) -> None:
    said = reading(**{"of": "front clearance", "reads": "20 ± 1 mm", **content})
    note = measured("m", said)
    assert isinstance(note, Measured)
    stack = stack_of(book(mount("ring", thickness="8 mm caliper")), mounts)
    assert refused_reading("door lower", note.readings[0], stack, shape) == why


def test_the_face_that_a_speaker_sits_on() -> None:
    dash = [seat_of(kind) for kind in ("dash corner", "dash centre speaker")]
    assert dash == ["sub-dash face", "sub-dash face"]
    faces = [seat_of(kind) for kind in ("rear door", "mirror triangle", "dash corner", "parcel shelf", None)]
    assert faces == ["door metal", "door metal", "sub-dash face", "inside face of panel", "inside face of panel"]


def test_a_note_says_by_how_much_or_does_not() -> None:
    one = standing(tried(to_spare="3 mm"))
    assert one.has_gap
    assert not one.without_gap.has_gap
    assert isinstance(one.note, Tried)
    assert not standing(measured("m", reading("front clearance", "20 ± 1 mm"))).has_gap


@pytest.mark.parametrize(("subject", "builds"), [("room", 2), ("plug", 1)])
def test_a_note_of_an_unknown_build_was_of_any_that_differs_in_room(subject: str, builds: int) -> None:
    splits = {"build": {**BUILDS["build"], "bears_on": {"subjects": [subject]}}}
    assert len(standing(car(splits=splits), tried()).builds) == builds


def test_a_note_without_its_gap_says_neither_how_much_was_left_nor_how_much_it_was_short() -> None:
    for note in (tried(reason="glass", to_spare="3 mm"), tried(verdict="does not", reason="glass", short_by="3 mm")):
        assert standing(note).has_gap
        assert not standing(note).without_gap.has_gap


def test_only_a_strong_note_replaces_another() -> None:
    found = place(book(tried("old"), tried("new", replaces="old", sure="told"))).evidence
    assert [one.note.id for one in found.standing] == ["old"]


def test_a_note_is_of_the_builds_that_bear_on_its_place() -> None:
    values: dict[str, Any] = {"values": {"early": {"years": [1]}, "late": {"years": [2]}}}
    splits = {
        "door": {**values, "bears_on": {"places": [DOOR]}},
        "shelf": {**values, "bears_on": {"places": ["shelf"]}},
    }
    of = car(splits=splits)
    late = ((("door", "late"),),)
    assert standing(of, tried(splits={"door": "late"})).builds == standing(of, tried(year=2)).builds == late
    assert standing(of, tried()).builds == ((("door", "early"),), *late)


def test_words_that_name_no_mount_need_not_mean_the_same_in_two_notes() -> None:
    depth = reading("rear depth to glass down", "70 ± 1 mm", datum="bracket seat")
    notes = [measured(name, depth, mounts=["some ring"]) for name in ("a", "b")]
    keys = {one.stack.key for one in place(book(*notes)).evidence.standing if one.stack}
    assert len(keys) == 2
