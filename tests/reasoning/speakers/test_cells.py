"""Which numbers a speaker's fit is about."""

from typing import Any

import pytest

from bezelbook.reasoning.bounds import Rise
from bezelbook.reasoning.speakers.cells import (
    MountHole,
    Presented,
    SpeakerRoom,
    demands,
    structure,
)
from bezelbook.reasoning.speakers.stacks import stack_of
from tests.reasoning.speakers.doors import (
    DOOR,
    SHELF,
    book,
    car,
    measured,
    mount,
    place,
    reading,
    resolved,
    speaker,
    tried,
)

MM = 1_000_000


@pytest.mark.parametrize(
    ("note", "where", "rears"),
    [
        (None, DOOR, ("glass",)),
        (None, SHELF, ("fixed",)),
        (measured("m", reading("rear depth to fixed", "70 ± 1 mm")), DOOR, ("fixed", "glass")),
        (measured("m", reading("front clearance", "20 ± 1 mm")), DOOR, ("glass",)),
        (measured("m", reading("front clearance", "20 ± 1 mm"), place=SHELF), SHELF, ("fixed",)),
        (measured("m", reading("rear depth to glass down", "70 ± 1 mm"), place=SHELF), SHELF, ("fixed", "glass")),
        (tried(verdict="does not", reason="glass", place=SHELF), SHELF, ("fixed", "glass")),
        (tried(verdict="does not", reason="depth", glass="up"), DOOR, ("fixed", "glass")),
        (tried(verdict="does not", reason="depth"), DOOR, ("glass",)),
        (tried(), DOOR, ("glass",)),
        (tried(verdict="does not", reason="glass", sure="told", place=SHELF), SHELF, ("fixed",)),
    ],
)
def test_what_can_stop_a_speaker_at_the_back(note: Any, where: str, rears: tuple[str, ...]) -> None:
    of = book(*([note] if note else []))
    assert place(of, where).frame.rears == rears


def test_only_what_bears_on_the_room_of_the_place_tells_builds_apart() -> None:
    splits = {
        "shelf": {"values": {"flat": {}, "high": {}}, "bears_on": {"places": [SHELF]}},
        "door": {"values": {"early": {}, "late": {}}, "bears_on": {"places": [DOOR], "subjects": ["room"]}},
        "audio": {"values": {"plain": {}, "loud": {}}, "bears_on": {"subjects": ["plug"]}},
    }
    assert place(book(car(splits=splits))).frame.builds == ((("door", "early"),), (("door", "late"),))


def test_only_the_worst_of_travel_says_that_the_travel_was_read() -> None:
    down = measured("m", reading("rear depth to glass down", "70 ± 1 mm"))
    worst = measured("m", reading("rear depth at worst of travel", "70 ± 1 mm"))
    assert [place(book(note)).frame.travel_read for note in (down, worst)] == [False, True]


def test_a_round_speaker_asks_of_the_narrow_way_and_an_oval_of_both() -> None:
    of = book(speaker("oval", basket_short="90 mm caliper"), mount("ring", thickness="8 mm caliper"))
    here = place(of)
    [setting] = resolved(of, mounts=("ring",)).settings
    asked = demands(here.frame, resolved(of, mounts=()).needs, setting)
    assert [(one.need, one.size, one.shift) for one in asked] == [
        ("basket", "short way", 0),
        ("mounting depth", "glass", 8 * MM),
        ("front height", "front", -8 * MM),
    ]
    oval = demands(here.frame, resolved(of, mounts=(), speaker="oval").needs, setting)
    assert [(one.need, one.size) for one in oval[:2]] == [("basket", "long way"), ("basket short way", "short way")]


def test_with_the_glass_up_nothing_is_asked_of_it_but_of_what_is_fixed() -> None:
    of = book()
    [setting] = resolved(of, mounts=(), glass="up").settings
    asked = demands(place(of).frame, resolved(of).needs, setting)
    assert [one.size for one in asked] == ["short way", "fixed", "front"]


def test_an_uncertain_ring_presents_its_own_depths() -> None:
    of = book(mount("ring", thickness="8 ± 1 mm"))
    [setting] = resolved(of, mounts=("ring",)).settings
    rear, front = demands(place(of).frame, resolved(of).needs, setting)[1:]
    assert isinstance(rear.cell, Presented)
    assert isinstance(front.cell, Presented)
    bounds = structure(of, {rear.cell, front.cell}, (setting.stack,), (), holes_unread=False)
    assert len([one for one in bounds if isinstance(one, Rise)]) == 4
    behind, before = rear.cell.room, front.cell.room
    assert {(one.over, one.under) for one in bounds if isinstance(one, Rise)} == {
        (rear.cell, behind),
        (behind, rear.cell),
        (front.cell, before),
        (before, front.cell),
    }


def ordered(*cells: object) -> set[tuple[object, object]]:
    """Which of these numbers can never be less than which."""
    of = book(mount("ring", tabs_in="1 mm caliper", tabs_out="2 mm caliper"))
    bounds = structure(of, set(cells), (stack_of(of, ()),), (), holes_unread=True)  # type: ignore[arg-type]
    return {(one.over, one.under) for one in bounds if isinstance(one, Rise)}


def test_cutting_takes_no_room_away_and_the_long_way_is_the_longer() -> None:
    plain, cut = SpeakerRoom((), "nothing", "short way"), SpeakerRoom((), "a rib", "short way")
    other, long_way = SpeakerRoom((), "a flap", "short way"), SpeakerRoom((), "a rib", "long way")
    assert ordered(plain, cut, other) == {(cut, plain), (other, plain)}
    assert ordered(cut, long_way) == {(long_way, cut)}
    assert ordered(SpeakerRoom((), "nothing", "fixed"), SpeakerRoom((), "nothing", "glass")) == set()
    assert ordered(plain, SpeakerRoom((("build", "late"),), "nothing", "short way")) == set()


def test_tabs_that_are_out_take_no_room_away() -> None:
    within, out = MountHole("ring", "short", "in"), MountHole("ring", "short", "out")
    assert ordered(within, out) == {(out, within)}
    assert ordered(within, MountHole("ring", "long", "in")) == {(MountHole("ring", "long", "in"), within)}
    assert ordered(within, MountHole("other", "short", "out")) == set()
    assert ordered(within, SpeakerRoom((), "nothing", "short way")) == set()


def test_depths_through_the_same_stack_keep_the_order_of_their_rooms() -> None:
    plain, cut = SpeakerRoom((), "nothing", "fixed"), SpeakerRoom((), "a rib", "fixed")
    of = book(mount("ring", thickness="8 ± 1 mm"))
    stack = stack_of(of, ("ring",))
    bounds = structure(of, {Presented(stack.key, plain), Presented(stack.key, cut)}, (stack,), (), holes_unread=False)
    pairs = {(one.over, one.under) for one in bounds if isinstance(one, Rise) and not one.by}
    assert (Presented(stack.key, cut), Presented(stack.key, plain)) in pairs
    late = Presented(stack.key, SpeakerRoom((("build", "late"),), "a rib", "fixed"))
    apart = structure(of, {Presented(stack.key, plain), late}, (stack,), (), holes_unread=False)
    assert not [one for one in apart if isinstance(one, Rise) and not one.by]
