"""Glass and tabs belong to places for speakers, loom and plugs to openings; a reading is of the bare hole."""

from typing import Any

import pytest

from bezelbook.kinds.note.record import AnyNote
from bezelbook.reasoning.differing.case import case_of
from bezelbook.reasoning.differing.roomier import moved, way_of
from tests.reasoning import making
from tests.reasoning.differing.a_clash import axes, no, why, why_still, yes

DOOR = making.vehicle(places={making.HOLE: {"kind": "door lower", "side": "left"}})
CONE: dict[str, Any] = {
    "name": "cone",
    "nominal": "6 1/2 in",
    "shape": "round",
    "speaker_kind": "coaxial",
    "mounting_depth": "63 ± 1 mm caliper",
}
CONE |= {"basket": "141 ± 0.5 mm caliper"}
SHALLOW_CONE = CONE | {"name": "shallow cone", "mounting_depth": "60 ± 1 mm caliper"}


def in_a_door(first: AnyNote, second: AnyNote) -> list[str]:
    speakers = [making.record("speakers", name, said) for name, said in (("cone", CONE), ("low", SHALLOW_CONE))]
    bracket = making.mount("bracket", tabs_in="127 mm caliper", tabs_out="143 mm caliper")
    book = making.book(DOOR, first, second, bracket, making.mount("ring", mount_kind="spacer"), *speakers)
    return [one.axis for one in moved(case_of(book, book.vehicles[making.CAR], making.HOLE, (first, second)))]


def test_glass_up_gives_room_in_a_door_and_the_loom_does_not() -> None:
    first = yes(what="cone", glass=None, loom=None, cut=None)
    second = no(what="low", glass="down", loom=None, reason="glass")
    assert in_a_door(first, second) == ["glass", "cut"]
    assert in_a_door(yes(what="cone", glass="down"), second) == []


def test_tabs_out_make_room_for_a_basket() -> None:
    first = yes(what="cone", tabs=None, mounts=["bracket"])
    hole = making.measured("no", making.reading("cut-out", "127 ± 1 mm"), tabs="in")
    assert in_a_door(first, hole) == ["tabs"]


def test_a_place_that_the_vehicle_does_not_list_may_be_of_either_sort() -> None:
    elsewhere = making.vehicle(places={})
    assert "loom" in {one.axis for one in why(yes(loom=None), no(loom="behind"), elsewhere)}


@pytest.mark.parametrize(("axis", "way"), [("plugs", "off"), ("loom", "aside"), ("cut", "nothing"), ("tabs", None)])
def test_a_reading_that_does_not_say_is_of_the_hole_as_it_stands(axis: Any, way: str | None) -> None:
    assert way_of(axis, making.measured("m", making.reading("depth", "150 mm"))) == way


def test_anything_cut_is_something_cut() -> None:
    assert way_of("cut", making.tried(cut="the lip")) == "something"
    assert way_of("plugs", making.tried(plugs=None)) == "on"


def test_tabs_belong_to_a_mount_that_has_some_or_to_one_that_nobody_knows() -> None:
    hole = making.measured("no", making.reading("cut-out", "127 ± 1 mm"), tabs="in", mounts="none")
    assert in_a_door(yes(what="cone", tabs=None, mounts=["the usual one"]), hole) == ["tabs"]
    assert in_a_door(yes(what="cone", tabs=None, mounts=None), hole) == ["tabs"]
    assert in_a_door(yes(what="cone", tabs=None, mounts=["ring"]), hole) == []


def test_a_reading_has_no_plugs_and_is_called_by_where_the_glass_was() -> None:
    shallow = making.measured("m", making.reading("depth", "150 ± 1 mm"))
    assert "plugs" not in axes(why_still(yes(plugs="off"), shallow))
    assert "plugs" not in axes(why_still(yes(plugs="on"), no(plugs="off"))), "two words would have to be wrong"
