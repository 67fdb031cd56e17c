"""What settles a clash is asked of the room itself: of the notes that clash, and of all the others of the place."""

from fractions import Fraction
from typing import Any

import pytest

from bezelbook.kinds.note.record import Measured, Tried
from bezelbook.kinds.record import Record
from bezelbook.reasoning.differing.otherwise import Otherwise, otherwise
from tests.reasoning import making

SHELF = {"places": {making.HOLE: {"kind": "parcel shelf", "side": "centre"}}}
FACE = "inside face of panel"
NO_LOOM = {"loom": None, "plugs": None}


def depth(name: str, mm: int, **said: Any) -> Measured:
    return making.measured(name, making.reading("depth", f"{mm} ± 1 mm", tool="depth gauge"), **said)


def behind(name: str, mm: int, **said: Any) -> Measured:
    reads = making.reading("rear depth to fixed", f"{mm} ± 1 mm", tool="depth gauge", datum=FACE)
    return making.measured(name, reads, **said)


def of(*notes: Tried | Measured, more: tuple[Record, ...] = ()) -> Otherwise | None:
    """The first two, which clash, among all of these."""
    book = making.book(*more, *notes)
    return otherwise(book, book.vehicles[making.CAR], making.HOLE, notes[:2])


def settled(found: Otherwise | None, *changed: Measured) -> Fraction:
    assert found is not None
    return found.settles({note.id: note for note in changed})


def test_what_leaves_the_clash_as_it_is_settles_nothing() -> None:
    found = of(depth("a", 150), depth("b", 170))
    assert settled(found) == settled(found, depth("b", 165)) == 0
    assert settled(found, depth("b", 151)) == 1


def test_the_others_of_the_place_have_to_agree_too() -> None:
    """Three of 150 and one of 170: it is that one, and what would make it 160 is not enough."""
    others = [depth("c", 150), depth("d", 150)]
    found = of(depth("a", 150), depth("b", 170), *others)
    assert settled(found, depth("b", 150)) == 1
    assert settled(found, depth("a", 170)) == Fraction(1, 2), "two more are still at odds with the deeper one"
    apart = of(depth("a", 150), depth("b", 170), depth("c", 151))
    assert settled(apart, depth("b", 149)) == Fraction(1, 8), "all others agree without it"


def test_a_way_in_which_cars_differ_settles_what_it_parts() -> None:
    elsewhere = {"build": making.split("early", "late", bears_on={"subjects": ["plug"]})}
    car, bearing = (making.vehicle(splits=splits) for splits in (elsewhere, {"build": making.split("early", "late")}))
    early, late = ({"build": value} for value in ("early", "late"))
    found = of(depth("a", 150, splits=early), depth("b", 170, splits=late), more=(car,))
    assert found is not None
    assert [found.settles(vehicle=one) for one in (bearing, None, bearing)] == [1, 0, 1]
    with_a_third = of(depth("a", 150, splits=early), depth("b", 170, splits=late), depth("c", 170, splits=early))
    assert with_a_third is not None
    assert with_a_third.settles(vehicle=bearing) == Fraction(1, 2), "two early ones are still apart"
    alike = of(depth("a", 150, splits=late), depth("b", 170, splits=late), more=(car,))
    assert alike is not None
    assert alike.settles(vehicle=bearing) == 0


def test_places_for_speakers_are_asked_about_as_such() -> None:
    car = making.vehicle(**SHELF)
    found = of(behind("a", 60), behind("b", 80), more=(car,))
    assert settled(found) == 0
    assert settled(found, behind("b", 61)) == 1
    assert of(behind("a", 60), behind("b", 61), more=(car,)) is None
    others_too = of(behind("a", 60), behind("b", 80), behind("c", 60), more=(car,))
    assert settled(others_too, behind("a", 80)) == Fraction(1, 2), "the two others are still apart"


def test_what_the_other_side_was_measured_to_share_is_one_of_the_others_of_a_place_for_speakers() -> None:
    side = {"kind": "parcel shelf", "side": "left", "other_side": "far"}
    far = {"kind": "parcel shelf", "side": "right", "other_side": making.HOLE}
    car = making.vehicle(places={making.HOLE: side, "far": far})
    found = of(
        behind("a", 60), behind("b", 80), behind("c", 60, place="far", other_side="measured the same"), more=(car,)
    )
    assert settled(found, behind("a", 80)) == Fraction(1, 2), "the other side is still at odds with the second"


def test_in_a_door_what_did_not_go_in_was_short_of_the_glass() -> None:
    car = making.vehicle(places={making.HOLE: {"kind": "door lower", "side": "left"}})
    deep = making.reading("rear depth to glass down", "70 ± 1 mm", tool="putty", datum="door metal")
    sizes = {"mounting_depth": "60 ± 1 mm"}
    no = making.tried("b", what="a coax", sizes=sizes, verdict="does not", reason="depth", glass="down", **NO_LOOM)
    found = of(making.measured("a", deep), no, more=(car,))
    assert settled(found, making.measured("a", deep | {"reads": "60 ± 1 mm"})) == 1


def test_a_nose_is_asked_about_where_a_note_of_the_place_tells_of_one() -> None:
    nosed = making.unit("nosed", nose_width="200 ± 1 mm caliper")
    frame = making.measured("a", making.reading("nose width", "190 ± 1 mm"))
    found = of(frame, making.tried("b", what="nosed"), more=(nosed,))
    assert settled(found) == 0


@pytest.mark.parametrize("kind", ["parcel shelf", "plain opening"])
def test_a_way_that_bears_on_the_place_alone_settles_it_there(kind: str) -> None:
    """Each with what is measured at such a place."""
    bearing = {"build": making.split("early", "late", bears_on={"places": [making.HOLE], "subjects": ["room"]})}
    car, parted = (
        making.vehicle(places={making.HOLE: {"kind": kind, "side": "centre"}}, splits=splits)
        for splits in ({"build": making.split("early", "late", bears_on={"subjects": ["plug"]})}, bearing)
    )
    of_kind = behind if kind == "parcel shelf" else depth
    early, late = (
        of_kind(name, mm, splits={"build": build}) for name, mm, build in (("a", 60, "early"), ("b", 80, "late"))
    )
    found = of(early, late, more=(car,))
    assert found is not None
    assert [found.settles(vehicle=one) for one in (car, parted)] == [0, 1]


def test_a_box_that_no_record_knows_is_asked_about_as_one_where_boxes_go() -> None:
    deep = making.tried("a", what="a box", sizes={"depth": "150 ± 1 mm"}, plugs="off")
    stopped = {"sizes": {"depth": "140 ± 1 mm"}, "verdict": "does not", "reason": "depth", "sure": "dry-fitted"}
    assert of(deep, making.tried("b", what="another", plugs="off", **stopped)) is not None


def test_where_either_goes_notes_of_an_opening_are_asked_about_as_such() -> None:
    car = making.vehicle(places={making.HOLE: {"kind": "overhead console", "side": "centre"}})
    found = of(depth("a", 150), depth("b", 170), more=(car,))
    assert settled(found) == 0
    assert settled(found, depth("b", 151)) == 1


def test_what_is_no_clash_over_room_is_not_asked_about() -> None:
    one, other = depth("a", 150), depth("b", 170)
    seen = making.record("notes", "s", {"form": "seen", "vehicle": making.CAR, "place": making.HOLE, "plug": "grey"})
    book = making.book(one, other, seen)
    assert otherwise(book, None, making.HOLE, (one, other)) is None
    assert otherwise(book, book.vehicles[making.CAR], making.HOLE, (one, seen)) is None
    assert of(one, depth("b", 151)) is None


def test_a_note_that_stands_aside_counts_where_it_is_one_of_the_clash() -> None:
    """A guess binds nothing, so it is none of the others; and is tried out all the same."""
    guess = making.tried("b", what="deep", sure="eyeballed")
    found = of(depth("a", 150), guess, more=(making.unit("deep", body_depth="170 ± 1 mm caliper"),))
    assert settled(found, depth("a", 220)) == 1
    beside = of(depth("a", 150), guess, depth("c", 150), more=(making.unit("deep", body_depth="170 ± 1 mm caliper"),))
    wide = making.measured("a", making.reading("width", "190 ± 1 mm"))
    assert settled(beside, wide) == Fraction(1, 2), "the guess is at odds with the third as well"
